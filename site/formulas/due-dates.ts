import { dueList, type Life } from '../../worker/core/calc/lives/due.ts';
import { productTimes } from '../../worker/core/calc/lives/product-time.ts';
import { hoursOf, totalHours } from '../../worker/core/calc/lives/total-hours.ts';
import { printDate } from '../../worker/core/text/dates.ts';
import { CLOCK_TOPICS } from '../published/clock-cases.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { launches } from './launches.ts';
import { said, sum } from './steps.ts';
import { remaining } from './time-left.ts';

const hours: Formula = {
  id: 'total-hours',
  title: 'Total hours',
  tex: ['h = r + o'],
  symbols: [
    ['h', 'total hours at release', 'h'],
    ['r', 'reading of the meter', 'h'],
    ['o', 'what an earlier meter had counted', 'h'],
  ],
  by: [totalHours, hoursOf],
  holds: 'Where a meter counts the product.',
  example() {
    const [meter] = DEMO.meters?.readings ?? [];
    if (!meter || !DEMO.meters) throw new Error('the demo visit has meters');
    const replaced = { ...meter, outHours: 886.5, offsetHours: 318.4 };
    const visit = { ...DEMO, meters: { ...DEMO.meters, readings: [replaced] } };
    return {
      given: { r: [replaced.outHours, 'h'], o: [replaced.offsetHours, 'h'] },
      steps: [sum('h = r + o', hoursOf(visit, meter.of) ?? Number.NaN, 'h')],
    };
  },
};

const calendar: Formula = {
  id: 'due-date',
  title: 'Due by calendar months',
  tex: ['d = e(d_0 + n)'],
  symbols: [
    ['d', 'due date', ''],
    ['d_0', 'date of the last time, or when it had been due where that was earlier', ''],
    ['n', 'interval in calendar months', 'months'],
    ['e', 'last day of the month, where the interval runs to it; else the date itself', ''],
  ],
  by: [dueList],
  holds: 'Where the month is shorter, its last day: 31 January and one month give 28 February.',
  example() {
    const input = inputOf<Pick<Life, 'interval' | 'lastDone'>>('RG-12a');
    const { year = Number.NaN, month = Number.NaN, day = Number.NaN } = CLOCK_TOPICS.due(input);
    const from = input.lastDone.date ?? '';
    const due = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
    return {
      case: 'RG-12a',
      given: { n: [input.interval.months ?? Number.NaN, 'months'] },
      steps: [
        said(`${printDate(from)} and ${input.interval.months} months, to the end of the month: ${printDate(due)}.`, {
          year,
          month,
          day,
        }),
      ],
    };
  },
};

const SINCE_NEW = 's = s_0 + h - h_0';

const ofProduct: Formula = {
  id: 'product-time',
  title: 'Time of a product since new',
  tex: [SINCE_NEW],
  symbols: [
    ['s', 'time of the product now, since new or since overhaul', 'h'],
    ['s_0', 'time of the product when it was fitted', 'h'],
    ['h', 'total hours at release by its meter', 'h'],
    ['h_0', 'total hours by that meter when it was fitted', 'h'],
  ],
  by: [productTimes],
  holds:
    'Also for landings, launches, cycles and starts. Time of an earlier product is in both totals, so it does not count.',
  example() {
    const { fitted } = DEMO.aircraft.engine ?? {};
    const clock = productTimes(DEMO)[0]?.clocks[0];
    return {
      given: {
        s_0: [fitted?.sinceNew.hours ?? Number.NaN, 'h'],
        h: [clock?.now ?? Number.NaN, 'h'],
        h_0: [fitted?.at.hours ?? Number.NaN, 'h'],
      },
      steps: [sum(SINCE_NEW, clock?.sinceNew ?? Number.NaN, 'h')],
    };
  },
};

const DUE = 'H = \\min(h_0, h_w) + i';

const byHours: Formula = {
  id: 'due-hours',
  title: 'Due by hours or landings',
  tex: [DUE],
  symbols: [
    ['H', 'hours at which it is due; landings in the same way', 'h'],
    ['h_0', 'hours when it was done', 'h'],
    ['h_w', 'hours at which it had been due, where the record says so', 'h'],
    ['i', 'interval', 'h'],
  ],
  by: [dueList],
  holds: 'Work done early does not stretch an interval, and a tolerance that was used is not added to the next one.',
  example() {
    const input = inputOf<Pick<Life, 'interval' | 'lastDone' | 'wasDueAt'>>('RG-12d');
    return {
      case: 'RG-12d',
      given: {
        h_0: [input.lastDone.hours ?? Number.NaN, 'h'],
        h_w: [input.wasDueAt?.hours ?? Number.NaN, 'h'],
        i: [input.interval.hours ?? Number.NaN, 'h'],
      },
      steps: [sum(DUE, CLOCK_TOPICS.due(input).hours, 'h', 'hours')],
    };
  },
};

export const dueDates: Topic = {
  id: 'due-dates',
  title: 'Due dates',
  formulas: [hours, calendar, byHours, ofProduct, launches, ...remaining],
};
