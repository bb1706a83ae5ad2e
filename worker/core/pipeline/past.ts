import * as z from 'zod';
import type { OpenItem } from '../calc/open-items/open-item.ts';
import { OpenItem as KeptItem, Readings as KeptReadings } from '../calc/open-items/open-item-result.ts';
import type { Readings } from '../calc/open-items/readings.ts';
import { PACK_NAME } from '../patterns.ts';
import type { VisitRecord } from '../record/record.ts';

/** Known history of an aircraft from earlier packs. */
export interface Past {
  /** Open items, with their names. */
  open: readonly OpenItem[];
  /** Last meter readings. */
  readings: Readings;
}

const Kept = z.object({ open: z.array(KeptItem.loose()), readings: KeptReadings.loose() });

/** Returns the history that a record keeps of the standing file that it names. */
export const keptPast = (standing: VisitRecord['standing']): Past | undefined =>
  Kept.safeParse(standing?.kept).data as Past | undefined;

const Facts = z.object({
  open: z.object({ over: z.string(), items: z.array(KeptItem.loose()), readings: KeptReadings.loose() }),
});

/** Returns the history in the facts of a pack; undefined if they do not have it, as those of a correction. */
export function openIn(facts: unknown): Past | undefined {
  const open = Facts.safeParse(facts).data?.open;
  return open && ({ open: open.items, readings: open.readings } as unknown as Past);
}

/**
 * Returns the history before a visit. If its record builds on a pack under other marks or of another workshop, what is
 * open in that standing file belongs to it: the packs of this aircraft do not contain it.
 */
export function withOrigin(
  { open, readings }: Past,
  { standing, aircraft }: Pick<VisitRecord, 'standing' | 'aircraft'>,
): Past {
  const isFromElsewhere =
    standing?.proof !== undefined || PACK_NAME.exec(standing?.pack ?? '')?.[1] !== aircraft.registration.toUpperCase();
  const kept = isFromElsewhere ? keptPast(standing) : undefined;
  if (!kept) return { open, readings };
  const known = new Set(open.map(({ item }) => item));
  const brought = kept.open.filter(({ item }) => item !== undefined && !known.has(item));
  return { open: [...open, ...brought], readings: readings.meters.length > 0 ? readings : kept.readings };
}
