import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** Hang tests of the aircraft. Angles are nose down. */
export const HangResult = z.object({
  tests: z.array(z.object({ state: z.string(), angleDeg: z.number(), isWithin: orUndefined(z.boolean()) })),
  /** Centre of gravity below the bolt, from two tests of which one has a known mass added. */
  cg: orUndefined(
    z.object({ armMm: z.number(), standardArmMm: z.number(), depthMm: z.number(), standardDepthMm: z.number() }),
  ),
});
export type HangResult = z.infer<typeof HangResult>;
