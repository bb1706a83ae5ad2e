import * as z from 'zod';
import { Life } from '../../record/life.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** Due point of an item on each clock, and the clock that expires first. */
export const Due = z.object({
  id: z.string(),
  item: z.string(),
  basis: Life.shape.basis,
  dueDate: orUndefined(z.string()),
  dueHours: orUndefined(z.number()),
  /** Identifier of the meter of its hours; the airframe's if none is named. */
  meter: orUndefined(z.string()),
  dueLandings: orUndefined(z.number()),
  daysLeft: orUndefined(z.number()).describe('Negative when overdue'),
  hoursLeft: orUndefined(z.number()),
  landingsLeft: orUndefined(z.number()),
  /** Date on which it is expected to come due, by the clock that expires first; undefined if use is not known. */
  forecastDate: orUndefined(z.string()),
  isOverdue: z.boolean(),
  isWithinTolerance: z.boolean().describe('Overdue, but within the tolerance'),
});
export type Due = z.infer<typeof Due>;

/** Applicability of a bulletin to this aircraft by serial and part numbers; undecided if these cannot be compared. */
export const Applies = z.enum(['applies', 'does-not-apply', 'undecided']);
export type Applies = z.infer<typeof Applies>;
