/** Why a file cannot be put into a pack. */
export type Refusal = 'unknown-type' | 'too-large' | 'damaged' | 'encrypted' | 'scripted' | 'colour';

/** Ends the reading of a file that cannot be put into a pack; `inspectAttachment` turns it into a value. */
export class RefusedError extends Error {
  readonly refusal: Refusal;

  /** @param detail one sentence without full stop */
  constructor(refusal: Refusal, detail: string) {
    super(detail);
    this.refusal = refusal;
  }
}

/** Ends the reading of a file that does not hold what its own structure says. */
export function damaged(detail: string): RefusedError {
  return new RefusedError('damaged', detail);
}
