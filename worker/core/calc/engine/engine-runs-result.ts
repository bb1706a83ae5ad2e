import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** One instrument before and after the work, with its limits. */
export const RunComparison = z.object({
  name: z.string(),
  unit: z.string(),
  before: orUndefined(z.number()),
  after: orUndefined(z.number()),
  change: orUndefined(z.number()),
  least: orUndefined(z.number()),
  most: orUndefined(z.number()),
  isWithin: z.boolean(),
  /** The change is more than one step of the instrument. */
  isChanged: z.boolean(),
});
export type RunComparison = z.infer<typeof RunComparison>;
