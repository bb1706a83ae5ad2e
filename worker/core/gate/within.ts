import { isAtLeast, isAtMost } from '../calc/numbers/limit-met.ts';

/** A usual range, both ends within. */
export interface UsualRange {
  from: number;
  to: number;
}

/** Whether a value lies within a range. */
export function isInRange(value: number, { from, to }: UsualRange): boolean {
  return isAtLeast(value, from) && isAtMost(value, to);
}
