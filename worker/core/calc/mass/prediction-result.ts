import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';
import { MassArmUncertainty, PlacedMass } from './mass-result.ts';

/** Empty condition predicted from documents and changes. */
export const Prediction = PlacedMass.extend({
  baseline: PlacedMass,
  /** From the stated limits only; a mass without a limit counts as exact. */
  standard: MassArmUncertainty,
});
export type Prediction = z.infer<typeof Prediction>;

/** The weighing compared with the prediction. */
export const Comparison = z.object({
  differenceKg: z.number(),
  differenceMm: z.number(),
  standard: MassArmUncertainty.describe('Standard uncertainty of the differences'),
  /** Difference in units of its standard uncertainty; zero without any uncertainty. */
  massRatio: z.number(),
  armRatio: z.number(),
  isSignificant: z.boolean(),
});
export type Comparison = z.infer<typeof Comparison>;

/** Weighed mass that documents, survey and changes do not explain: a mass at an arm, never an item. */
export const Residual = z.object({
  massKg: z.number(),
  expandedKg: z.number().describe('k = 2'),
  /** Arm of that mass; undefined if the mass may be scatter only. */
  armMm: orUndefined(z.number()),
  /** The mass is more than its expanded uncertainty. */
  isTold: z.boolean(),
});
export type Residual = z.infer<typeof Residual>;
