import * as z from 'zod';
import { orUndefined } from '../../numbers/result-field.ts';

export const CAUSE_KINDS = [
  'pounds-for-kilograms',
  'kilograms-for-pounds',
  'reading-slip',
  'points-exchanged',
  'tare-forgotten',
  'tare-twice',
  'fuel-more',
  'fuel-less',
  'oil-out',
  'oil-in',
  'loose-item',
  'still-aboard',
  'not-aboard',
  'not-moved',
  'item-out',
  'item-mass-unit',
  'item-arm',
  'point-arm-slip',
  'scale-zero',
  'growth',
  'level',
  'point-arm',
] as const;

/** One fault that explains a mismatch of weighing and prediction, with its figures. */
export const Cause = z.object({
  kind: z.enum(CAUSE_KINDS),
  /** Tank, point, station or item, by its name in the record. */
  of: orUndefined(z.string()),
  /** The second of two points. */
  and: orUndefined(z.string()),
  /** Index of the run with that reading; undefined if it is in every run. */
  run: orUndefined(z.int()),
  massKg: orUndefined(z.number()),
  limitKg: orUndefined(z.number().describe('k = 2')),
  volumeL: orUndefined(z.number()),
  limitL: orUndefined(z.number().describe('k = 2')),
  /** The figure in the record, and the one that would explain the mismatch. */
  recorded: orUndefined(z.object({ quantity: z.enum(['mass', 'arm']), value: z.number(), instead: z.number() })),
  angleDeg: orUndefined(z.number()),
  chiSquare: z.number(),
});
export type Cause = z.infer<typeof Cause>;

/** A mass that would explain a mismatch, with its place. */
export const MissingMass = z.object({
  massKg: z.number(),
  limitKg: z.number().describe('k = 2'),
  armMm: z.number(),
  limitMm: z.number().describe('k = 2'),
});
export type MissingMass = z.infer<typeof MissingMass>;

/** The causes that explain a mismatch within the uncertainties. */
export const MismatchCauses = z.object({
  /** Of weighing and prediction without any cause. */
  chiSquare: z.number(),
  /** The uncertainties alone do not explain the mismatch. */
  isNeeded: z.boolean(),
  /** The mismatch as one mass; undefined if it may be scatter, or its place is uncertain by a quarter of the airframe. */
  missing: orUndefined(MissingMass),
  causes: z.array(Cause),
});
export type MismatchCauses = z.infer<typeof MismatchCauses>;
