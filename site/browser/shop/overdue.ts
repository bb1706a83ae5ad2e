import type { DueList } from '../../../worker/client/client.ts';

/** Returns the number of overdue items in words; undefined if none is known to be overdue. */
export function overdueWords(due: Pick<DueList, 'items' | 'deferred'> | undefined): string | undefined {
  if (!due) return 'what is overdue: not known';
  const late = [...due.items.map(({ isOverdue }) => isOverdue), ...due.deferred.map(({ isOverdue }) => isOverdue)];
  const count = late.filter(Boolean).length;
  return count === 0 ? undefined : `${count} overdue`;
}
