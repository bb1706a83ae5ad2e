import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** Usable energy of one traction battery from full. */
export const StoreResult = z.object({
  id: z.string(),
  name: z.string(),
  usableKwh: z.number(),
  standardKwh: z.number(),
  /** Cycles left; undefined if none are counted or limited. */
  cyclesLeft: orUndefined(z.number()),
});
export type StoreResult = z.infer<typeof StoreResult>;

/** All traction batteries together, and the time that they give in cruise above the reserve. */
export const EnergyResult = z.object({
  stores: z.array(StoreResult),
  usableKwh: z.number(),
  standardKwh: z.number(),
  endurance: orUndefined(z.object({ reserveKwh: z.number(), minutes: z.number(), standardMin: z.number() })).describe(
    'Undefined without powers in the record',
  ),
});
export type EnergyResult = z.infer<typeof EnergyResult>;
