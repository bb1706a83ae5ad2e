import type { Due } from '../../calc/lives/due.ts';
import { printDate } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import type { PackContext } from '../context.ts';
import { DASH } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { meterRows } from './meter-rows.ts';

const BASES = {
  directive: 'directive',
  'life-limit': 'life limit',
  programme: 'programme',
  recommendation: 'recommended',
  owner: 'owner',
} as const;

export function dueListView(context: PackContext): View {
  const { visit, results } = context;
  const hoursPerYear = visit.lives?.hoursPerYear;
  return {
    ...common(context),
    meters: meterRows(context),
    use:
      hoursPerYear === undefined ? 'not stated: no forecast from hours' : `${printNumber(hoursPerYear, 0)} h in a year`,
    lines: results.due.map((due) => dueRow(context, due)),
    ...sources(
      'Due at whichever comes first. Where a line was done late within its tolerance, the next interval counts from where it had been due, so that tolerances do not add up.',
      'The forecast assumes the use stated. Intervals as in the record; the maker’s data and the authority’s directives come first.',
    ),
  };
}

function dueRow({ visit }: PackContext, due: Due): Record<string, string> {
  const life = visit.lives?.items.find(({ id }) => id === due.id);
  const hours = (value: number | undefined): string => (value === undefined ? '' : `${printNumber(value, 1)} h`);
  const parts = (list: readonly string[]): string => list.filter(Boolean).join('; ') || DASH;
  return {
    id: due.id,
    item: due.item,
    basis: BASES[due.basis],
    last: parts([life?.lastDone.date ? printDate(life.lastDone.date) : '', hours(life?.lastDone.hours)]),
    due: parts([
      due.dueDate ? printDate(due.dueDate) : '',
      hours(due.dueHours),
      due.dueLandings === undefined ? '' : `${due.dueLandings} landings`,
    ]),
    left: parts([
      due.daysLeft === undefined ? '' : `${printNumber(due.daysLeft, 0)} days`,
      hours(due.hoursLeft),
      due.landingsLeft === undefined ? '' : `${due.landingsLeft} landings`,
    ]),
    forecast: due.forecastDate ? printDate(due.forecastDate) : DASH,
    state: due.isOverdue ? (due.isWithinTolerance ? 'within tolerance' : 'OVERDUE') : '',
    reference: life?.reference ?? DASH,
  };
}
