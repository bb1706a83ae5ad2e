import { LIMITS } from '../../limits.ts';
import { type Fault, fault } from '../../text/faults.ts';
import { RefusedError } from '../refusal.ts';

// Work is charged before it is done, also for forms and pictures as often as they are shown. What is charged without
// `verify` is charged with it too, so that a file that passed is never too costly later. The cost of all files of a
// pack is a rule of the release check, over figures stored with each file. A draft of a record that breaks the rule
// leaves out all files.

/** Kinds of work counted while a file is read. */
export type Work = 'unpackedBytes' | 'passedBytes' | 'objects' | 'tokens' | 'draws' | 'pixels';

export type Bounds = Readonly<Record<Work, number>>;

const BOUNDS: Bounds = {
  unpackedBytes: LIMITS.fileUnpackedBytes,
  passedBytes: LIMITS.filePassedBytes,
  objects: LIMITS.fileObjects,
  tokens: LIMITS.fileTokens,
  draws: LIMITS.fileDraws,
  pixels: LIMITS.filePixels,
};

const inMegabytes = (bytes: number): number => bytes / 1e6;

// Each names the excessive quantity, so that the author of the file can make it smaller.
const EXCESS: Readonly<Record<Work, (most: number) => Fault>> = {
  unpackedBytes: (most) => fault('unpacks-more-than-mb', { inMegabytes: inMegabytes(most) }),
  passedBytes: (most) => fault('pictures-fonts-take-more-work-unpack', { inMegabytes: inMegabytes(most) }),
  objects: () => fault('holds-more-objects-than-paper-needs'),
  tokens: () => fault('pages-drawn-more-steps-than-paper'),
  draws: () => fault('pages-draw-same-over-over-more'),
  pixels: (most) => fault('pages-show-more-than-million-pixels', { most: most / 1e6 }),
};

/**
 * Cost limit and cost so far of reading one file. Code that unpacks, reads or draws charges its work before it goes on;
 * the limit applies to the file as a whole, with all its parts. Nothing is timed: the clock of the runtime does not
 * advance during computation.
 */
export class Budget {
  /** Charges so far. */
  readonly spent: Record<Work, number> = {
    unpackedBytes: 0,
    passedBytes: 0,
    objects: 0,
    tokens: 0,
    draws: 0,
    pixels: 0,
  };
  readonly #most: Bounds;

  constructor(most: Bounds = BOUNDS) {
    this.#most = most;
  }

  /** @throws RefusedError if the charge exceeds the limit of the file */
  spend(work: Work, count: number): void {
    this.spent[work] += count;
    // NaN, the result of invalid figures, is too much as well.
    if (!(this.spent[work] <= this.#most[work])) throw new RefusedError('too-large', EXCESS[work](this.#most[work]));
  }
}
