import { heightOf } from '../measure/stack.ts';
import type { Strip } from '../measure/strip.ts';
import { type PageOfStrips, paginate } from './paginate.ts';

/** A last page that holds less than this share of a page looks like a mistake. */
const POOR_SHARE = 0.16;
/** How far spaces between blocks may be closed up to take it in, the least first. */
const CLOSER = [0.85, 0.7, 0.55] as const;

/**
 * Divides a column of strips into pages; where a few lines alone would make the last one, the spaces between blocks are closed
 * up, if that takes them in.
 *
 * @param bodyPt the height of an empty page
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
