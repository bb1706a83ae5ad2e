import { LIMITS } from '../limits.ts';
import { type Fault, fault, saidFault } from '../text/faults.ts';
import { inEnglish } from '../text/formatter.ts';

/** Reason for which a pack cannot contain a file. */
export type Refusal = 'unknown-type' | 'too-large' | 'damaged' | 'encrypted' | 'scripted' | 'colour';

/** The refusal of a file, as data. */
export interface Refused {
  ok: false;
  refusal: Refusal;
  /** What is the matter with the file. */
  detail: Fault;
}

/** Ends the reading of a file that cannot be put into a pack; `orRefused` turns it into data. */
export class RefusedError extends Error {
  readonly refusal: Refusal;
  /** Fault of the file. */
  readonly fault: Fault;

  constructor(refusal: Refusal, fault: Fault) {
    super(inEnglish(saidFault(fault)));
    this.refusal = refusal;
    this.fault = fault;
  }
}

/** Returns the error that ends the reading of a file whose content contradicts its own structure. */
export function damaged(fault: Fault): RefusedError {
  return new RefusedError('damaged', fault);
}

/** Ends the reading of a file of no known type. */
export function unknownType(): RefusedError {
  return new RefusedError('unknown-type', fault('neither-pdf-nor-jpeg-png-picture'));
}

/** Ends the reading of a file of too many bytes. */
export function tooManyBytes(length: number): RefusedError {
  return new RefusedError(
    'too-large',
    fault('mb-mb-most', { length: (length / 1e6).toFixed(1), annexBytes: LIMITS.annexBytes / 1e6 }),
  );
}

/** Runs a reading and returns its refusal as data. Never throws: a file that the reader fails on is damaged. */
export function orRefused<Read>(read: () => Read): Read | Refused {
  try {
    return read();
  } catch (error) {
    const refused = error instanceof RefusedError ? error : damaged(fault('not-understood'));
    return { ok: false, refusal: refused.refusal, detail: refused.fault };
  }
}

/**
 * Returns what was read.
 *
 * @throws RefusedError for a refusal
 */
export function accepted<Read extends { ok: true }>(answer: Read | Refused): Read {
  if (!answer.ok) throw new RefusedError(answer.refusal, answer.detail);
  return answer;
}
