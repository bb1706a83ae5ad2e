import type { DueList } from '../../../worker/client/client.ts';

/** How much of what stands open is past its limit, in words; undefined where nothing is known to be. */
export function overdueWords(due: Pick<DueList, 'items' | 'deferred'> | undefined): string | undefined {
  if (!due) return 'what is overdue: not known';
  const late = [...due.items.map(({ isOverdue }) => isOverdue), ...due.deferred.map(({ isOverdue }) => isOverdue)];
  const count = late.filter(Boolean).length;
  return count === 0 ? undefined : `${count} overdue`;
}
