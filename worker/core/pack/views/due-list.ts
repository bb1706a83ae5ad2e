import { type OpenDue, timeLeft } from '../../calc/open-items/time-left.ts';
import { hoursOnMeter } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import type { Bound } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { certificateRows } from './certificate-rows.ts';
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

/** Whether any item comes due, by this record or by an earlier one. */
export function hasDue(context: PackContext): boolean {
  const { lives, certificates = [] } = context.visit;
  return lives !== undefined || certificates.length > 0 || dueItems(context).length > 0;
}

/** Returns all items due: maintenance items, recurring and open bulletins, and deferred findings. */
export function dueListView(context: PackContext): View {
  const { issuedAt, fmt } = context;
  const { hoursPerYear } = context.results.readings;
  const lines = timeLeft(dueItems(context), context.results.readings, fmt.local(issuedAt));
  return {
    ...common(context),
    meters: meterRows(context),
    use:
      hoursPerYear === undefined
        ? fmt.text(m.dueList_notStatedNoForecast)
        : fmt.text(m.dueList_hYear, { hoursPerYear: fmt.plain(hoursPerYear, 0) }),
    lines: lines.map((due) => dueRow(context, due)),
    ...certificateRows(context),
    ...sources(fmt.text(m.dueList_dueWhicheverComesFirst), fmt.text(m.dueList_forecastAssumesUseStated)),
  };
}

const dueItems = (context: PackContext) => standing(context, 'due', 'bulletin', 'deferral');

function dueRow(context: PackContext, due: OpenDue): Record<string, string> {
  const { visit, fmt } = context;
  const { kind, basis, of, meter, until, done = {} } = due;
  const life = kind === 'due' ? visit.lives?.items.find(({ id }) => id === due.id) : undefined;
  const hours = (value: number | undefined, bound?: Bound): string =>
    value === undefined ? '' : hoursOnMeter(visit, { hours: value, meter, of }, fmt, bound);
  const landings = (value: number | undefined): string => (value === undefined ? '' : landingsText(value, fmt));
  const parts = (list: readonly string[]): string => list.filter(Boolean).join('; ') || DASH;
  return {
    id: itemName(context, due),
    item: due.text,
    basis: basis ? fmt.text(BASES[basis]) : fmt.text(m.deferred),
    last: parts([done.date ? fmt.date(done.date) : '', hours(done.hours)]),
    due: parts([until.date ? fmt.date(until.date) : '', hours(until.hours, 'most'), landings(until.landings)]),
    left: parts([
      due.daysLeft === undefined ? '' : daysText(due.daysLeft, fmt),
      hours(due.hoursLeft, 'most'),
      landings(due.landingsLeft),
    ]),
    forecast: due.forecastDate ? fmt.date(due.forecastDate) : DASH,
    state: due.isOverdue
      ? due.isWithinTolerance
        ? fmt.text(m.dueList_withinTolerance)
        : fmt.text(m.dueList_overdue)
      : '',
    reference: life?.reference ?? DASH,
  };
}
