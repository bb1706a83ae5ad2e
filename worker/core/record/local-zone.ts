import type { Visit } from './visit.ts';

/**
 * A moment that carries the offset of the workshop: that of the end of the work, or else of the arrival. Everything that a pack and
 * its pages print stands in this one zone, which follows from the record alone.
 */
export function localZone({ visit }: Pick<Visit, 'visit'>): string {
  return visit.workEndedAt ?? visit.arrivedAt;
}
