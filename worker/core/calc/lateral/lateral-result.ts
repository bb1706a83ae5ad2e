import * as z from 'zod';
import { Extreme, Loading } from '../loading/loading-result.ts';
import { MassArmUncertainty, PlacedMass } from '../mass/mass-result.ts';
import { Comparison } from '../mass/prediction-result.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** Smallest distance of all permitted loadings to a lateral limit, in mm, negative beyond it. */
export const LateralMargin = z.object({
  side: z.enum(['left', 'right']),
  margin: z.number(),
  loading: Loading,
});
export type LateralMargin = z.infer<typeof LateralMargin>;

/** Lateral centre of gravity of a named loading: at take-off, and without usable fuel. Right is positive. */
export const LateralPoint = z.object({ kind: z.string(), takeOffMm: z.number(), noFuelMm: z.number() });
export type LateralPoint = z.infer<typeof LateralPoint>;

/** Lateral axis of the empty and the loaded aircraft. Arms are from the centre line; right is positive. */
export const LateralResult = z.object({
  empty: PlacedMass,
  basis: z.enum(['weighed', 'computed']),
  expanded: orUndefined(MassArmUncertainty).describe('k = 2, where known'),
  comparison: orUndefined(Comparison),
  extremes: orUndefined(z.object({ left: Extreme, right: Extreme })),
  /** Only with a lateral envelope. */
  margins: z.array(LateralMargin),
  loadings: z.array(LateralPoint),
});
export type LateralResult = z.infer<typeof LateralResult>;
