import * as z from 'zod';

/** A mass with its moment about the datum; masses add and moments add, arms do not. */
export const MassMoment = z.object({ massKg: z.number(), momentKgMm: z.number() });
export type MassMoment = z.infer<typeof MassMoment>;

/** A mass with its moment and the arm that follows from them. */
export const PlacedMass = MassMoment.extend({ armMm: z.number() });
export type PlacedMass = z.infer<typeof PlacedMass>;

/** Uncertainties of a mass and of its centre of gravity. */
export const MassArmUncertainty = z.object({ massKg: z.number(), armMm: z.number() });
export type MassArmUncertainty = z.infer<typeof MassArmUncertainty>;
