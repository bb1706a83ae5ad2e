import { readVisit, SETTINGS } from '../../tests/calc/read-visit.ts';
import { CLOCK_TOPICS } from '../../tests/published/clock-cases.ts';
import { type Due, dueList, forecastDate, type Life } from '../../worker/calc/lives/due.ts';
import { hoursOf, totalHours } from '../../worker/calc/total-hours.ts';
import { dateOf, daysBetween, printDate } from '../../worker/units/calendar.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { said, sum } from './steps.ts';

const demo = readVisit('nose-wheel-full');
const TODAY = dateOf(SETTINGS.at);

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
    const [meter] = demo.meters?.readings ?? [];
    if (!meter || !demo.meters) throw new Error('the demo visit has meters');
    const replaced = { ...meter, outHours: 886.5, offsetHours: 318.4 };
    const visit = { ...demo, meters: { ...demo.meters, readings: [replaced] } };
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

/** A line of 100 hours, last done so that it is overdue by a few. */
function overdueLine(): Due {
  const life: Life = {
    id: 'L',
    item: 'Example',
    basis: 'programme',
    interval: { hours: 100 },
    lastDone: { hours: 1100 },
    toleranceHours: 10,
  };
  const [due] = dueList(demo, { items: [life] }, SETTINGS.at);
  if (!due) throw new Error('one line gives one due date');
  return due;
}

const left: Formula = {
  id: 'left-and-tolerance',
  title: 'What is left, and the tolerance',
  tex: ['l = H - h', '-l \\leq t'],
  symbols: [
    ['l', 'hours left, negative when overdue; days and landings in the same way', 'h'],
    ['H', 'hours at which it is due', 'h'],
    ['h', 'total hours at release', 'h'],
    ['t', 'tolerance, which is in months for dates; landings have none', 'h'],
  ],
  by: [dueList],
  holds: 'Overdue as soon as one of the clocks is negative; within the tolerance while every one of them is.',
  example() {
    const due = overdueLine();
    return {
      given: {
        H: [due.dueHours ?? Number.NaN, 'h'],
        h: [hoursOf(demo, 'airframe') ?? Number.NaN, 'h'],
        t: [10, 'h'],
      },
      steps: [
        sum('l = H - h', due.hoursLeft ?? Number.NaN, 'h'),
        said(due.isWithinTolerance ? 'Overdue, within the tolerance.' : 'Overdue, beyond the tolerance.'),
      ],
    };
  },
};

const DAYS = 'n = \\left\\lfloor \\frac{l}{u} \\cdot 365.25 \\right\\rfloor';

const forecast: Formula = {
  id: 'forecast',
  title: 'Day on which hours will have run out',
  tex: [DAYS],
  symbols: [
    ['n', 'days from today; the due date where that is earlier', 'd'],
    ['l', 'hours left', 'h'],
    ['u', 'use in a year, as the record states it', 'h'],
  ],
  by: [forecastDate],
  holds: 'While the use stays the same. Without a use the date alone counts.',
  example() {
    const day = forecastDate(TODAY, undefined, 95.1, 90) ?? '';
    return {
      given: { l: [95.1, 'h'], u: [90, 'h'] },
      steps: [sum(DAYS, daysBetween(TODAY, day), 'days'), said(`From ${printDate(TODAY)} that is ${printDate(day)}.`)],
    };
  },
};

export const dueDates: Topic = {
  id: 'due-dates',
  title: 'Due dates',
  formulas: [hours, calendar, byHours, left, forecast],
};
