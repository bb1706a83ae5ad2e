import { heightOf } from '../measure/stack.ts';
import type { Strip } from '../measure/strip.ts';
import { type PageOfStrips, paginate } from './paginate.ts';

// Spaces close by 15, 30 or 45 %, the first that suffices. Signatures alone on a page look like a mistake.

/** A last page filled less than this share looks like a mistake. */
const POOR_SHARE = 0.16;
/** Factors for the spaces between blocks that avoid it, the mildest first. */
const CLOSER = [0.85, 0.7, 0.55] as const;

/**
 * Divides a column of strips into pages; if only a few lines would make the last one, the spaces between blocks are
 * reduced, if that avoids it.
 *
 * @param bodyPt height of an empty page
 */
export function paginateClosedUp(strips: readonly Strip[], bodyPt: number): PageOfStrips[] {
  const pages = paginate(strips, bodyPt);
  const last = pages.at(-1);
  if (pages.length < 2 || !last || heightOf(last.strips) > POOR_SHARE * bodyPt) return pages;
  for (const share of CLOSER) {
    const closer = paginate(
      strips.map((strip) => ({ ...strip, abovePt: strip.abovePt * share, belowPt: strip.belowPt * share })),
      bodyPt,
    );
    if (closer.length < pages.length) return closer;
  }
  return pages;
}
