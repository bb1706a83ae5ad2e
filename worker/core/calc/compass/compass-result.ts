import * as z from 'zod';
import { Swing } from '../../record/compass.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** Magnetic variation at a place and time. */
export const Variation = z.object({
  variationDeg: z.number().describe('East is positive'),
  model: z.string(),
  validFrom: z.string().describe('First day for which the model was made'),
  validUntil: z.string(),
});
export type Variation = z.infer<typeof Variation>;

/** One reading: deviation = magnetic heading − compass reading, east positive. */
export const SwungReading = z.object({
  headingDeg: z.number(),
  compassDeg: z.number(),
  deviationDeg: z.number(),
  residualDeg: orUndefined(z.number()).describe('Deviation less what the coefficients give'),
});
export type SwungReading = z.infer<typeof SwungReading>;

/** Coefficients of deviation in degrees; D and E are zero if too few headings were read, or too unevenly, to determine them. */
export const Coefficients = z.object({
  A: z.number(),
  B: z.number(),
  C: z.number(),
  D: z.number(),
  E: z.number(),
});
export type Coefficients = z.infer<typeof Coefficients>;

/** Coefficients B and C from the cardinal headings only, used by the correction swing. */
export const Correction = z.object({
  B: z.number(),
  C: z.number(),
  /** Compass reading to set on south with the correctors. */
  setSouthDeg: z.number(),
  setWestDeg: z.number(),
});
export type Correction = z.infer<typeof Correction>;

/** A line of the compass card: to fly the heading, steer this by the compass. */
export const CardLine = z.object({ forDeg: z.number(), steerDeg: z.number() });
export type CardLine = z.infer<typeof CardLine>;

export const SwingResult = z.object({
  state: Swing.shape.state,
  readings: z.array(SwungReading),
  coefficients: orUndefined(Coefficients),
  correction: orUndefined(Correction),
  greatestDeviationDeg: z.number(),
  greatestResidualDeg: z.number(),
  /** Empty if the headings do not cover the circle. */
  card: z.array(CardLine),
});
export type SwingResult = z.infer<typeof SwingResult>;

export const CompassResult = z.object({
  variation: orUndefined(Variation),
  swings: z.array(SwingResult),
  loads: z.array(z.object({ name: z.string(), shiftDeg: z.number() })).describe('How far each load moves the compass'),
});
export type CompassResult = z.infer<typeof CompassResult>;
