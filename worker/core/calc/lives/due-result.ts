import * as z from 'zod';
import { Life } from '../../record/life.ts';
import { Meter } from '../../record/meters.ts';
import { orUndefined } from '../numbers/result-field.ts';
import { Counting, OtherCounts } from '../open-items/open-item-result.ts';

/** Due point of an item on each clock, and the clock that expires first. */
export const Due = z.object({
  id: z.string(),
  item: z.string(),
  basis: Life.shape.basis,
  dueDate: orUndefined(z.string()),
  dueHours: orUndefined(z.number()),
  /** Product that its hours count. */
  of: Meter.shape.of,
  /** Identifier of the meter of its hours; the airframe's if none is named. */
  meter: orUndefined(z.string()),
  dueLandings: orUndefined(z.number()),
  /** Totals at which it is due by launches, cycles or starts. */
  dueCounts: orUndefined(OtherCounts),
  /** Counters of its launches, cycles, starts and landings. */
  counters: orUndefined(z.array(Counting)),
  dueAfter: orUndefined(z.literal('all')).describe('Due only after all of its clocks have expired'),
  daysLeft: orUndefined(z.number()).describe('Negative when overdue'),
  hoursLeft: orUndefined(z.number()),
  landingsLeft: orUndefined(z.number()),
  countsLeft: orUndefined(OtherCounts),
  /** Date on which it is expected to come due, by the clock that expires first; undefined if use is not known. */
  forecastDate: orUndefined(z.string()),
  isOverdue: z.boolean(),
  isWithinTolerance: z.boolean().describe('Overdue, but within the tolerance'),
});
export type Due = z.infer<typeof Due>;

/** Applicability of a bulletin to this aircraft by serial and part numbers; undecided if these cannot be compared. */
export const Applies = z.enum(['applies', 'does-not-apply', 'undecided']);
export type Applies = z.infer<typeof Applies>;
