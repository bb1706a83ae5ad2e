import * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { unprintableIn } from '../../core/text/printable.ts';

/** Line of text for display: without control characters, and without characters that change the direction of text. */
export const printableLine = (max: number = LIMITS.lineLength) =>
  z
    .string()
    .min(1)
    .max(max)
    .regex(/^[^\n\r]*$/, 'one line')
    .refine((text) => unprintableIn(text).length === 0, 'characters that can be printed');
