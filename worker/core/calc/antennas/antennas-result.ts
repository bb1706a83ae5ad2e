import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

export const AntennaResult = z.object({
  id: z.string(),
  wavelengthMm: z.number(),
  quarterWaveMm: z.number(),
  cableLossDb: orUndefined(z.number()).describe('Length times loss, and the connectors'),
  dragN: orUndefined(z.number()),
  standingWave: orUndefined(z.number()).describe('Greatest of the ratios measured'),
});
export type AntennaResult = z.infer<typeof AntennaResult>;

/** Distance between two antennas. */
export const Spacing = z.object({
  first: z.number().describe('Place of the antenna in the record, from 0'),
  second: z.number(),
  distanceMm: z.number(),
  neededMm: orUndefined(z.number()).describe('The greater of what their manufacturers require'),
});
export type Spacing = z.infer<typeof Spacing>;

export const AntennasResult = z.object({
  antennas: z.array(AntennaResult),
  spacings: z.array(Spacing).describe('Every pair once'),
});
export type AntennasResult = z.infer<typeof AntennasResult>;
