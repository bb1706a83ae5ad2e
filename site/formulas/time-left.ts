import { type Due, dueList, forecastDate, type Life } from '../../worker/core/calc/lives/due.ts';
import { hoursOf } from '../../worker/core/calc/lives/total-hours.ts';
import { printDate } from '../../worker/core/text/dates.ts';
import { dateOf, daysBetween } from '../../worker/core/units/calendar.ts';
import { SETTINGS } from '../published/read-visit.ts';
import { DEMO } from './demo.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const TODAY = dateOf(SETTINGS.at);

/** Returns a due item of 100 hours that is overdue by a few. */
function overdueLine(): Due {
  const life: Life = {
    id: 'L',
    item: 'Example',
    basis: 'programme',
    interval: { hours: 100 },
    lastDone: { hours: 1100 },
    toleranceHours: 10,
  };
  const [due] = dueList(DEMO, { items: [life] }, SETTINGS.at);
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
        h: [hoursOf(DEMO, 'airframe') ?? Number.NaN, 'h'],
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

export const remaining: readonly Formula[] = [left, forecast];
