import type { Visit } from './visit.ts';

/**
 * Returns a timestamp with the offset of the workshop: the end of the work, or else the arrival. A pack and its pages
 * print every time in this one zone, which follows from the record only.
 */
export function localZone({ visit }: Pick<Visit, 'visit'>): string {
  return visit.workEndedAt ?? visit.arrivedAt;
}
