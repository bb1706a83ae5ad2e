import type { DueList } from '../../../worker/client/client.ts';

/** Returns the number of overdue items in words; undefined if none is known to be overdue. */
export function overdueWords(due: Pick<DueList, 'comingDue'> | undefined): string | undefined {
  if (!due) return 'what is overdue: not known';
  const count = due.comingDue.filter(({ isOverdue }) => isOverdue).length;
  return count === 0 ? undefined : `${count} overdue`;
}
