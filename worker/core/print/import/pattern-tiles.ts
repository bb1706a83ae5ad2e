import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import { isArray, type PdfDictionary } from '../pdf-object.ts';
import { RefusedError } from '../refusal.ts';
import type { Resolve } from './decode-stream.ts';
import type { Box } from './page-box.ts';

// Many patterns may name one list, and it may be long.
const MATRIX_ITEMS = 6;

/** Refuses a pattern whose cell stands on its page more often than can be drawn, by the areas of both (ISO 32000-1, 8.7.3). */
export function refuseCrowded(pattern: PdfDictionary, [left, bottom, right, top]: Box, resolve: Resolve): void {
  const step = (key: string): number => Number(resolve(pattern.get(key)));
  const matrix = resolve(pattern.get('Matrix'));
  const [a = 1, b = 0, c = 0, d = 1] = isArray(matrix)
    ? matrix.slice(0, MATRIX_ITEMS).map((each) => Number(resolve(each)))
    : [];
  const cell = Math.abs(step('XStep') * step('YStep') * (a * d - b * c));
  if (!(((right - left) * (top - bottom)) / cell <= LIMITS.patternTiles))
    throw new RefusedError('too-large', fault('pattern-stands-side-side-more-often'));
}
