import type { DueList } from '../../../worker/client/client.ts';
import { dueLimit } from '../../../worker/pack/views/due-limit.ts';
import type { Printer } from '../../../worker/units/print.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/** What comes due, counted from today; hours and landings as they stood at the release. */
export function dueTable({ items, deferred, issuedAt }: DueList, say: Printer): HTMLElement[] {
  const lines = items.map((due) => {
    const left = [
      due.daysLeft === undefined ? '' : `${say.plain(due.daysLeft, 0)}\u00a0days`,
      due.hoursLeft === undefined ? '' : `${say.plain(due.hoursLeft, 1)}\u00a0h`,
      due.landingsLeft === undefined ? '' : `${due.landingsLeft}\u00a0landings`,
    ];
    const state = due.isOverdue ? (due.isWithinTolerance ? 'within tolerance' : 'OVERDUE') : '';
    return [
      `${due.id} ${due.item}`,
      dueLimit(say, due.dueDate, due.dueHours) ?? '',
      left.filter(Boolean).join('; '),
      state,
    ];
  });
  const putOff = deferred.map(({ id, text, untilDate, untilHours }) => {
    return [`${id} ${text}`, dueLimit(say, untilDate, untilHours) ?? 'no limit set', '', 'put off'];
  });
  if (lines.length + putOff.length === 0) return [element('p', {}, 'The newest pack has no due list.')];
  const since = `Hours and landings as they stood at the release of ${say.date(issuedAt.slice(0, 10))}.`;
  return [table(['What', 'Due', 'Left', 'State'], [...putOff, ...lines]), element('p', { className: 'small' }, since)];
}
