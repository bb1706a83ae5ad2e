import { type Fault, saidFault } from '../text/faults.ts';
import { inEnglish } from '../text/formatter.ts';

/** Why a file cannot be put into a pack. */
export type Refusal = 'unknown-type' | 'too-large' | 'damaged' | 'encrypted' | 'scripted' | 'colour';

/** Ends the reading of a file that cannot be put into a pack; `inspectAttachment` turns it into a value. */
export class RefusedError extends Error {
  readonly refusal: Refusal;
  /** What is the matter with the file. */
  readonly fault: Fault;

  constructor(refusal: Refusal, fault: Fault) {
    super(inEnglish(saidFault(fault)));
    this.refusal = refusal;
    this.fault = fault;
  }
}

/** Ends the reading of a file that does not hold what its own structure says. */
export function damaged(fault: Fault): RefusedError {
  return new RefusedError('damaged', fault);
}
