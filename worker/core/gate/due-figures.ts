import type { Due, Left } from '../calc/lives/due.ts';
import { COUNTS, type Count, type NumberClock } from '../record/counts.ts';
import type { NamedMeter } from '../record/meter-name.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type List, list, type Said, said, type Value } from '../text/message.ts';
import { termOf } from '../text/terms.ts';
import { saidClock } from './said-clock.ts';

/** Due point of an item on each clock, and what is left of it; less than nothing if it has passed. */
export interface DuePoint extends NamedMeter, Partial<Left> {
  until: { date?: string | undefined } & Partial<Record<NumberClock, number | undefined>>;
}

/** The clocks of an item in words, and as data of a finding. */
export interface DueFigures {
  figures: List;
  data: Record<string, number | string>;
}

interface Clock {
  name: NumberClock | 'days';
  left: number;
  late: Said;
  still: Said;
}

/**
 * Says when an item is due and by how much it is late: on the clocks that have passed, or on all of them if none has.
 *
 * @example dueFigures(due)  // '12 days past 4 Nov 2026; 3.2 h past 1,200.0 h (airframe)'
 */
export function dueFigures(due: DuePoint): DueFigures {
  const clocks = [...dateClock(due), ...hoursClock(due), ...COUNTS.flatMap((count) => countClock(due, count))];
  const passed = clocks.filter(({ left }) => left < 0);
  const shown = passed.length > 0 ? passed : clocks;
  return {
    figures: list(
      shown.map(({ left, late, still }) => (left < 0 ? late : still)),
      '; ',
    ),
    data: Object.fromEntries(shown.map(({ name, left }) => [`${name}Left`, left])),
  };
}

function dateClock({ until, daysLeft }: DuePoint): Clock[] {
  if (until.date === undefined || daysLeft === undefined) return [];
  const values = { days: Math.abs(daysLeft), date: figure.date(until.date) };
  return [
    {
      name: 'days',
      left: daysLeft,
      late: said(m.dueFigures_daysLate, values),
      still: said(m.dueFigures_daysLeft, values),
    },
  ];
}

function hoursClock({ until, hoursLeft, meter, of }: DuePoint): Clock[] {
  if (until.hours === undefined || hoursLeft === undefined) return [];
  const name: Value = meter ?? termOf(of ?? 'airframe');
  const values = {
    hours: figure.plainApart(Math.abs(hoursLeft), 0, 1)[0],
    due: figure.plain(until.hours, 1),
    meter: name,
  };
  return [
    {
      name: 'hours',
      left: hoursLeft,
      late: said(m.dueFigures_hoursLate, values),
      still: said(m.dueFigures_hoursLeft, values),
    },
  ];
}

function countClock({ until, landingsLeft, countsLeft }: DuePoint, count: Count): Clock[] {
  const due = until[count];
  const left = count === 'landings' ? landingsLeft : countsLeft?.[count];
  if (due === undefined || left === undefined) return [];
  const values = { count: saidClock(count, Math.abs(left)), due: saidClock(count, due) };
  return [
    { name: count, left, late: said(m.dueFigures_countLate, values), still: said(m.dueFigures_countLeft, values) },
  ];
}

/** The due point of a line of the due list. */
export function pointOf(due: Due): DuePoint {
  const { dueDate, dueHours, dueLandings, dueCounts } = due;
  return { ...due, until: { date: dueDate, hours: dueHours, landings: dueLandings, ...dueCounts } };
}
