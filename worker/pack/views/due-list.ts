import { type OpenDue, timeLeft } from '../../calc/open-items/time-left.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Bound } from '../../text/print.ts';
import { hoursOnMeter } from '../../visit/meter-name.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { daysText, landingsText } from './counts.ts';
import { meterRows } from './meter-rows.ts';
import { itemName, standing } from './open-items.ts';

const BASES = {
  directive: m.dueList_directive,
  bulletin: m.bulletin,
  'life-limit': m.dueList_lifeLimit,
  programme: m.dueList_programme,
  recommendation: m.dueList_recommended,
  owner: m.dueList_owner,
} as const;

/** Whether anything comes due, by this record or by an earlier one. */
export function hasDue(context: PackContext): boolean {
  return context.visit.lives !== undefined || dueItems(context).length > 0;
}

/** All that comes due: lives, recurring and open bulletins, and findings that were put off. */
export function dueListView(context: PackContext): View {
  const { issuedAt, say } = context;
  const { hoursPerYear } = context.results.readings;
  const lines = timeLeft(dueItems(context), context.results.readings, say.local(issuedAt));
  return {
    ...common(context),
    meters: meterRows(context),
    use:
      hoursPerYear === undefined
        ? say.text(m.dueList_notStatedNoForecast)
        : say.text(m.dueList_hYear, { hoursPerYear: say.plain(hoursPerYear, 0) }),
    lines: lines.map((due) => dueRow(context, due)),
    ...sources(say.text(m.dueList_dueWhicheverComesFirst), say.text(m.dueList_forecastAssumesUseStated)),
  };
}

const dueItems = (context: PackContext) => standing(context, 'due', 'bulletin', 'deferral');

function dueRow(context: PackContext, due: OpenDue): Record<string, string> {
  const { visit, say } = context;
  const { kind, basis, of, meter, until, done = {} } = due;
  const life = kind === 'due' ? visit.lives?.items.find(({ id }) => id === due.id) : undefined;
  const hours = (value: number | undefined, bound?: Bound): string =>
    value === undefined ? '' : hoursOnMeter(visit, { hours: value, meter, of }, say, bound);
  const landings = (value: number | undefined): string => (value === undefined ? '' : landingsText(value, say));
  const parts = (list: readonly string[]): string => list.filter(Boolean).join('; ') || DASH;
  return {
    id: itemName(context, due),
    item: due.text,
    basis: basis ? say.text(BASES[basis]) : say.text(m.deferred),
    last: parts([done.date ? say.date(done.date) : '', hours(done.hours)]),
    due: parts([until.date ? say.date(until.date) : '', hours(until.hours, 'most'), landings(until.landings)]),
    left: parts([
      due.daysLeft === undefined ? '' : daysText(due.daysLeft, say),
      hours(due.hoursLeft, 'most'),
      landings(due.landingsLeft),
    ]),
    forecast: due.forecastDate ? say.date(due.forecastDate) : DASH,
    state: due.isOverdue
      ? due.isWithinTolerance
        ? say.text(m.dueList_withinTolerance)
        : say.text(m.dueList_overdue)
      : '',
    reference: life?.reference ?? DASH,
  };
}
