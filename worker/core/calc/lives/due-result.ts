import * as z from 'zod';
import { Life } from '../../record/life.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** When a line comes due on each clock, and which clock runs out first. */
export const Due = z.object({
  id: z.string(),
  item: z.string(),
  basis: Life.shape.basis,
  dueDate: orUndefined(z.string()),
  dueHours: orUndefined(z.number()),
  /** Identifier of the meter that its hours are read on; the one of the airframe where none is named. */
  meter: orUndefined(z.string()),
  dueLandings: orUndefined(z.number()),
  daysLeft: orUndefined(z.number()).describe('Negative when overdue'),
  hoursLeft: orUndefined(z.number()),
  landingsLeft: orUndefined(z.number()),
  /** The day on which it is expected to come due, by whichever clock comes first; none where use is not known. */
  forecastDate: orUndefined(z.string()),
  isOverdue: z.boolean(),
  isWithinTolerance: z.boolean().describe('Overdue, but within the tolerance'),
});
export type Due = z.infer<typeof Due>;

/** Whether a bulletin concerns this aircraft by serial and part numbers; undecided where these cannot be compared. */
export const Applies = z.enum(['applies', 'does-not-apply', 'undecided']);
export type Applies = z.infer<typeof Applies>;
