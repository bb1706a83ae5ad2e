import * as z from 'zod';
import { Meter } from '../../record/meters.ts';

/** Limit on each clock. Hours are total hours of the product that the meter counts. */
export const OpenLimit = z.object({
  date: z.string().exactOptional(),
  hours: z.number().exactOptional(),
  landings: z.number().exactOptional(),
});
export type OpenLimit = z.infer<typeof OpenLimit>;

/** Item open at the release of a pack that needs a response at a later visit. Plain data: it is kept as JSON. */
export const OpenItem = z.object({
  /**
   * Name for the life of the aircraft: the number of the first pack with it, and its identifier there, `Q-SLM-P1/F4`.
   * Left out while that pack has no number.
   */
  item: z.string().exactOptional(),
  /** Time at which the issue that named it was sealed; left out with the name. Earlier responses cannot have meant it. */
  since: z.string().exactOptional(),
  /** Identifier in its record. */
  id: z.string(),
  kind: z.enum(['deferral', 'watch', 'due', 'bulletin', 'limitation', 'test']),
  /** Reason for which a recurring item comes due. */
  basis: z.enum(['directive', 'life-limit', 'programme', 'recommendation', 'owner', 'bulletin']).exactOptional(),
  /** Description, in the words of the record. */
  text: z.string(),
  until: OpenLimit,
  /** Product that its hours count, and the identifier of the meter if the record names one. */
  of: Meter.shape.of,
  meter: z.string().exactOptional(),
  /** Last time of a recurring item. */
  done: OpenLimit.exactOptional(),
  toleranceHours: z.number().exactOptional(),
  toleranceMonths: z.number().exactOptional(),
  /** Its date is the end of a month, and so is the end of its tolerance. */
  toEndOfMonth: z.boolean().exactOptional(),
  /** Number of visits that carried it over without closing it, those before the first pack included if the record states them. */
  timesCarried: z.number().exactOptional(),
});
export type OpenItem = z.infer<typeof OpenItem>;

/** Pack of a reading; left out if the current visit took it. */
const ReadFor = z.object({
  pack: z.string().exactOptional(),
  /** The pack was withdrawn, perhaps because of this figure. */
  isWithdrawn: z.literal(true).exactOptional(),
});
export type ReadFor = z.infer<typeof ReadFor>;

/** A meter with its last reading. */
export const ReadMeter = ReadFor.extend({
  /** Identifier in the record. */
  id: z.string(),
  of: Meter.shape.of,
  /** Total hours at release. */
  hours: z.number(),
});
export type ReadMeter = z.infer<typeof ReadMeter>;

/** Last count of landings. */
export const ReadLandings = ReadFor.extend({ count: z.number() });

/** Hours and landings of an aircraft by the last readings of all its visits. Plain data: it is kept as JSON. */
export const Readings = z.object({
  /** Newest first. */
  meters: z.array(ReadMeter),
  landings: ReadLandings.exactOptional(),
  /** Expected use per year, in hours, from the last record that stated it. */
  hoursPerYear: z.number().exactOptional(),
});
export type Readings = z.infer<typeof Readings>;
