import { LIMITS } from '../../limits.ts';
import { inEnglish, phrase } from '../../words/words.ts';
import { RefusedError } from '../refusal.ts';

/** The kinds of work that are counted while a file is read. */
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

// Each names what there is too much of, so that somebody who made the file can make it smaller.
const EXCESS: Readonly<Record<Work, (most: number) => string>> = {
  unpackedBytes: (most) => inEnglish`it unpacks to more than ${inMegabytes(most)} MB`,
  passedBytes: (most) =>
    inEnglish`its pictures and fonts take more work to unpack than ${inMegabytes(most)} MB of them may`,
  objects: () => phrase`it holds more objects than a paper needs`,
  tokens: () => phrase`its pages are drawn in more steps than a paper needs`,
  draws: () => phrase`its pages draw the same over and over, more often than a paper needs`,
  pixels: (most) => inEnglish`its pages show more than ${most / 1e6} million pixels`,
};

/**
 * What the reading of one file may cost, and has cost. Whoever unpacks, reads or draws out charges it before it goes on; whatever part of
 * a file the cost arises in, the bound is that of the file. Nothing is timed: the clock of the runtime stands still while it computes.
 */
export class Budget {
  /** What has been charged so far. */
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

  /** @throws RefusedError when it is more than the file may cost */
  spend(work: Work, count: number): void {
    this.spent[work] += count;
    // NaN, which comes of figures that are none, is too much as well.
    if (!(this.spent[work] <= this.#most[work])) throw new RefusedError('too-large', EXCESS[work](this.#most[work]));
  }
}
