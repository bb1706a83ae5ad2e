import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** A mass with its moment, and the length without an arm. */
export const Harness = z.object({
  lengthM: z.number(),
  massKg: z.number(),
  armMm: orUndefined(z.number()).describe('Of the wires whose arm is stated'),
});
export type Harness = z.infer<typeof Harness>;

/** Mass of the wiring that the visit adds and removes: compared with the lines of the equipment change. */
export const HarnessMass = z.object({ added: Harness, removed: Harness });
export type HarnessMass = z.infer<typeof HarnessMass>;
