import type { DueList } from '../../../worker/client/client.ts';
import { dueLimit } from '../../../worker/pack/views/due-limit.ts';
import type { Printer } from '../../../worker/units/print.ts';
import { hoursOnMeter } from '../../../worker/visit/meter-name.ts';
import type { VisitRecord } from '../../../worker/visit/record.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/** What comes due, counted from today; hours and landings as they stood at the release. */
export function dueTable(
  { items, deferred, issuedAt }: DueList,
  record: Pick<VisitRecord, 'meters'>,
  say: Printer,
): HTMLElement[] {
  const lines = items.map((due) => {
    const left = [
      due.daysLeft === undefined ? '' : `${say.plain(due.daysLeft, 0)}\u00a0days`,
      due.hoursLeft === undefined ? '' : hoursOnMeter(record, { hours: due.hoursLeft, meter: due.meter }, say, 'most'),
      due.landingsLeft === undefined ? '' : `${due.landingsLeft}\u00a0landings`,
    ];
    const state = due.isOverdue ? (due.isWithinTolerance ? 'within tolerance' : 'OVERDUE') : '';
    return [
      `${due.id} ${due.item}`,
      dueLimit(record, { date: due.dueDate, hours: due.dueHours, meter: due.meter }, say) ?? '',
      left.filter(Boolean).join('; '),
      state,
    ];
  });
  const putOff = deferred.map(({ id, text, untilDate, untilHours }) => {
    return [
      `${id} ${text}`,
      dueLimit(record, { date: untilDate, hours: untilHours }, say) ?? 'no limit set',
      '',
      'put off',
    ];
  });
  if (lines.length + putOff.length === 0) return [element('p', {}, 'The newest pack has no due list.')];
  const since = `Hours and landings as they stood at the release of ${say.day(issuedAt)}.`;
  return [table(['What', 'Due', 'Left', 'State'], [...putOff, ...lines]), element('p', { className: 'small' }, since)];
}
