import type { Budget } from '../bytes/budget.ts';

// Of real content a lexical unit has some four bytes, blanks included: only what is longer than any figure costs more than one.
const BYTES_PER_STEP = 16;

/**
 * Charges a lexical unit for itself and for the bytes that are gone through to its end: a name, a string or the blanks before them may be as
 * long as the file.
 *
 * @param held how many units it costs to keep it for later. @default 1
 * @throws RefusedError
 */
export function spendUnit(budget: Budget, from: number, end: number, held = 1): void {
  budget.spend('tokens', held + Math.floor((end - from) / BYTES_PER_STEP));
}

/**
 * Charges bytes that are gone through, each of them `times` over.
 *
 * @throws RefusedError
 */
export function spendBytes(budget: Budget, bytes: number, times = 1): void {
  budget.spend('tokens', Math.floor((bytes * times) / BYTES_PER_STEP));
}
