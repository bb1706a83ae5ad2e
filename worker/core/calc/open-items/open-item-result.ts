import * as z from 'zod';
import { Meter } from '../../record/meters.ts';

/** On which clocks, and when on each. Hours are total hours of the product that the meter counts. */
export const OpenLimit = z.object({
  date: z.string().exactOptional(),
  hours: z.number().exactOptional(),
  landings: z.number().exactOptional(),
});
export type OpenLimit = z.infer<typeof OpenLimit>;

/** Something that stays open when a pack is released, and has to be answered for at a later visit. Plain data: it is kept as JSON. */
export const OpenItem = z.object({
  /**
   * Its name for the life of the aircraft: the pack number in which it first stood, and its identifier there, `Q-SLM-P1/F4`. Left out
   * while that pack has no number.
   */
  item: z.string().exactOptional(),
  /** When the issue was sealed that gave it this name; left out with the name. Who answered before cannot have meant it. */
  since: z.string().exactOptional(),
  /** How the record names it in which it stands. */
  id: z.string(),
  kind: z.enum(['deferral', 'watch', 'due', 'bulletin', 'limitation', 'test']),
  /** Why it comes due, for what comes again. */
  basis: z.enum(['directive', 'life-limit', 'programme', 'recommendation', 'owner', 'bulletin']).exactOptional(),
  /** What it is, in the words of the record. */
  text: z.string(),
  until: OpenLimit,
  /** What its hours count, and the meter by its identifier where the record names one. */
  of: Meter.shape.of,
  meter: z.string().exactOptional(),
  /** When it was done last, for what comes again. */
  done: OpenLimit.exactOptional(),
  toleranceHours: z.number().exactOptional(),
  toleranceMonths: z.number().exactOptional(),
  /** How many visits it was carried over without being closed, those before the first pack included where the record says so. */
  timesCarried: z.number().exactOptional(),
});
export type OpenItem = z.infer<typeof OpenItem>;

/** The pack that something was read for; left out where the visit at hand read it. */
const ReadFor = z.object({
  pack: z.string().exactOptional(),
  /** The pack was withdrawn, and perhaps for this very figure. */
  isWithdrawn: z.literal(true).exactOptional(),
});
export type ReadFor = z.infer<typeof ReadFor>;

/** A meter as it was read last. */
export const ReadMeter = ReadFor.extend({
  /** How the record names it. */
  id: z.string(),
  of: Meter.shape.of,
  /** Total hours at release. */
  hours: z.number(),
});
export type ReadMeter = z.infer<typeof ReadMeter>;

/** Landings as they were counted last. */
export const ReadLandings = ReadFor.extend({ count: z.number() });

/** How far an aircraft has flown by what was read last, over all its visits. Plain data: it is kept as JSON. */
export const Readings = z.object({
  /** The newest first. */
  meters: z.array(ReadMeter),
  landings: ReadLandings.exactOptional(),
  /** Use expected in a year, in hours, as a record stated it last. */
  hoursPerYear: z.number().exactOptional(),
});
export type Readings = z.infer<typeof Readings>;
