import * as z from 'zod';
import { LimitCheck } from '../surveillance/surveillance-result.ts';

const Figures = z.object({ figures: z.array(LimitCheck) });

/** Figures of the part of the same name, each with its limits, in the order of the record. */
export const MeasurementsResult = z.object({
  torques: z.array(LimitCheck),
  magnetometers: z.array(Figures),
  balances: z.array(Figures),
});
export type MeasurementsResult = z.infer<typeof MeasurementsResult>;
