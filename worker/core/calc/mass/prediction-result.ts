import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';
import { MassArmUncertainty, PlacedMass } from './mass-result.ts';

/** The empty condition that the papers and the changes lead to. */
export const Prediction = PlacedMass.extend({
  baseline: PlacedMass,
  /** From the stated limits alone; a mass without a limit counts as exact. */
  standard: MassArmUncertainty,
});
export type Prediction = z.infer<typeof Prediction>;

/** The weighing held against the prediction. */
export const Comparison = z.object({
  differenceKg: z.number(),
  differenceMm: z.number(),
  standard: MassArmUncertainty.describe('Standard uncertainty of the differences'),
  /** Difference in units of its standard uncertainty; zero where nothing is uncertain. */
  massRatio: z.number(),
  armRatio: z.number(),
  isSignificant: z.boolean(),
});
export type Comparison = z.infer<typeof Comparison>;

/** What the scales felt beyond papers, survey and changes: a mass somewhere, never an item. */
export const Residual = z.object({
  massKg: z.number(),
  expandedKg: z.number().describe('k = 2'),
  /** Where such a mass would sit; none where the mass may be scatter alone. */
  armMm: orUndefined(z.number()),
  /** The mass is more than its expanded uncertainty. */
  isTold: z.boolean(),
});
export type Residual = z.infer<typeof Residual>;
