import * as z from 'zod';
import { COUNTS } from '../../record/counts.ts';
import { Counter, Meter } from '../../record/meters.ts';
import { Product } from '../../record/product.ts';

/** Limit on each clock. Hours are total hours of the product that the meter counts. */
export const OpenLimit = z.object({
  date: z.string().exactOptional(),
  hours: z.number().exactOptional(),
  landings: z.number().exactOptional(),
  launches: z.number().exactOptional(),
  cycles: z.number().exactOptional(),
  starts: z.number().exactOptional(),
});
export type OpenLimit = z.infer<typeof OpenLimit>;

/** A counter of a limit. Landings of the log book have no identifier. */
export const Counting = z.object({
  counts: z.enum(COUNTS),
  id: z.string().exactOptional(),
  of: Counter.shape.of,
});
export type Counting = z.infer<typeof Counting>;

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
  /** A `certificate` is only in lists of what is due. */
  kind: z.enum(['deferral', 'watch', 'due', 'bulletin', 'limitation', 'test', 'certificate']),
  /** Reason for which a recurring item comes due. */
  basis: z.enum(['directive', 'life-limit', 'programme', 'recommendation', 'owner', 'bulletin']).exactOptional(),
  /** Description, in the words of the record. */
  text: z.string(),
  /** Document that requires it, by paragraph. */
  reference: z.string().exactOptional(),
  until: OpenLimit,
  /** Product that its hours count, and the identifier of the meter if the record names one. */
  of: Meter.shape.of,
  meter: z.string().exactOptional(),
  /** Counters of its launches, cycles, starts or landings; left out if only landings of the log book count. */
  counters: z.array(Counting).exactOptional(),
  /** Product that it is about, if its line names one: a product that was replaced has other items. */
  product: z.object({ kind: Product.shape.kind, serial: z.string() }).exactOptional(),
  /** Due only after all of its clocks have expired. */
  dueAfter: z.literal('all').exactOptional(),
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

/** Launches, cycles and starts; landings have a separate member since the first version. */
export const OtherCounts = z.object({
  launches: z.number().exactOptional(),
  cycles: z.number().exactOptional(),
  starts: z.number().exactOptional(),
});
export type OtherCounts = z.infer<typeof OtherCounts>;

/** An open item with the remainder until its limit; negative if overdue. */
export const OpenDue = OpenItem.extend({
  daysLeft: z.number().exactOptional(),
  hoursLeft: z.number().exactOptional(),
  landingsLeft: z.number().exactOptional(),
  countsLeft: OtherCounts.exactOptional(),
  /** Date on which it is expected to come due; left out without a limit or if the use is not known. */
  forecastDate: z.string().exactOptional(),
  isOverdue: z.boolean(),
  isWithinTolerance: z.boolean(),
});
export type OpenDue = z.infer<typeof OpenDue>;

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

/** A counter with its last count. */
export const ReadCounter = ReadFor.extend({
  id: z.string(),
  counts: z.enum(COUNTS),
  of: Counter.shape.of,
  /** Total at release. */
  count: z.number(),
});
export type ReadCounter = z.infer<typeof ReadCounter>;

/** Hours, landings and other counts of an aircraft by the last readings of all its visits. Plain data: it is kept as JSON. */
export const Readings = z.object({
  /** Newest first. */
  meters: z.array(ReadMeter),
  landings: ReadLandings.exactOptional(),
  counters: z.array(ReadCounter).exactOptional(),
  /** Expected use per year, in hours, from the last record that stated it. */
  hoursPerYear: z.number().exactOptional(),
});
export type Readings = z.infer<typeof Readings>;
