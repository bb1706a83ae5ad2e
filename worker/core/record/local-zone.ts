import type { Visit } from './visit.ts';

// Everything is printed in the zone of the workshop, from the offset of `workEndedAt` or `arrivedAt`: packs stay the
// same bytes, and what is due today follows the same calendar. Data keep times as received.

/**
 * Returns a timestamp with the offset of the workshop: the end of the work, or else the arrival. A pack and its pages
 * print every time in this one zone, which follows from the record only.
 */
export function localZone({ visit }: Pick<Visit, 'visit'>): string {
  return visit.workEndedAt ?? visit.arrivedAt;
}
