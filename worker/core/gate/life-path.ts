import type { Visit } from '../record/visit.ts';

/** Path in the record of a line of the due list. */
export function lifePath(visit: Visit, id: string): (string | number)[] {
  const index = visit.lives?.items.findIndex((life) => life.id === id) ?? 0;
  return ['lives', 'items', Math.max(0, index)];
}
