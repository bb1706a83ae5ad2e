import * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { unprintableIn } from '../../core/text/printable.ts';

/** One line of text that people are shown: no control characters, nothing that turns the direction of what follows. */
export const printableLine = (max: number = LIMITS.lineLength) =>
  z
    .string()
    .min(1)
    .max(max)
    .regex(/^[^\n\r]*$/, 'one line')
    .refine((text) => unprintableIn(text).length === 0, 'characters that can be printed');
