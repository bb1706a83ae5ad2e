import type { Due } from '../../calc/lives/due.ts';
import type { Bound } from '../../units/print.ts';
import { hoursOnMeter } from '../../visit/meter-name.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import { DASH } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { daysText, landingsText } from './counts.ts';
import { meterRows } from './meter-rows.ts';

const BASES = {
  directive: phrase`directive`,
  'life-limit': phrase`life limit`,
  programme: phrase`programme`,
  recommendation: phrase`recommended`,
  owner: phrase`owner`,
} as const;

export function dueListView(context: PackContext): View {
  const { visit, results, say } = context;
  const hoursPerYear = visit.lives?.hoursPerYear;
  return {
    ...common(context),
    meters: meterRows(context),
    use:
      hoursPerYear === undefined
        ? say.words`not stated: no forecast from hours`
        : say.words`${say.plain(hoursPerYear, 0)} h in a year`,
    lines: results.due.map((due) => dueRow(context, due)),
    ...sources(
      say.words`Due at whichever comes first. Where a line was done late within its tolerance, the next interval counts from where it had been due, so that tolerances do not add up.`,
      say.words`The forecast assumes the use stated. Intervals as in the record; the maker’s data and the authority’s directives come first.`,
    ),
  };
}

function dueRow({ visit, say }: PackContext, due: Due): Record<string, string> {
  const life = visit.lives?.items.find(({ id }) => id === due.id);
  const hours = (value: number | undefined, bound?: Bound): string =>
    value === undefined ? '' : hoursOnMeter(visit, { hours: value, meter: due.meter }, say, bound);
  const parts = (list: readonly string[]): string => list.filter(Boolean).join('; ') || DASH;
  return {
    id: due.id,
    item: due.item,
    basis: say.term(BASES[due.basis]),
    last: parts([life?.lastDone.date ? say.date(life.lastDone.date) : '', hours(life?.lastDone.hours)]),
    due: parts([
      due.dueDate ? say.date(due.dueDate) : '',
      hours(due.dueHours, 'most'),
      due.dueLandings === undefined ? '' : landingsText(due.dueLandings, say),
    ]),
    left: parts([
      due.daysLeft === undefined ? '' : daysText(due.daysLeft, say),
      hours(due.hoursLeft, 'most'),
      due.landingsLeft === undefined ? '' : landingsText(due.landingsLeft, say),
    ]),
    forecast: due.forecastDate ? say.date(due.forecastDate) : DASH,
    state: due.isOverdue ? (due.isWithinTolerance ? say.words`within tolerance` : say.words`OVERDUE`) : '',
    reference: life?.reference ?? DASH,
  };
}
