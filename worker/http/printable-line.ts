import * as z from 'zod';
import { LIMITS } from '../limits.ts';
import { unprintableIn } from '../text/printable.ts';

/** One line of text that people are shown: no control characters, nothing that turns the direction of what follows. */
export const printableLine = (max: number = LIMITS.lineLength) =>
  z
    .string()
    .min(1)
    .max(max)
    .regex(/^[^\n\r]*$/, 'one line')
    .refine((text) => unprintableIn(text).length === 0, 'characters that can be printed');
