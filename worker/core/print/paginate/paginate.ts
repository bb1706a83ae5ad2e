import { closingPt, gapPt } from '../measure/stack.ts';
import { BREAK, type Strip } from '../measure/strip.ts';

/** Strips of one page. `overflows` names a strip that is longer than the page. */
export interface PageOfStrips {
  strips: Strip[];
  overflows: string | null;
}

// Tolerance of a comparison of line heights with the height of a page: a hundredth of a point is invisible in print.
const TOLERANCE_PT = 0.01;

interface Fill {
  end: number;
  strips: Strip[];
}

// Returns as many strips as fit, under the head that a continued table repeats.
function fillPage(strips: readonly Strip[], start: number, bodyPt: number): Fill {
  const repeat = start > 0 ? (strips[start]?.repeat ?? null) : null;
  const page: Strip[] = repeat ? [{ ...repeat, frames: strips[start]?.frames ?? [] }] : [];
  let previous: Strip | null = null;
  let usedPt = 0;
  for (const first of page) {
    usedPt = gapPt(null, first) + first.heightPt;
    previous = first;
  }
  let end = start;
  for (; end < strips.length; end++) {
    const next = strips[end];
    if (!next) break;
    const nextPt = usedPt + gapPt(previous, next) + next.heightPt;
    if (nextPt + closingPt(next) > bodyPt + TOLERANCE_PT) break;
    page.push(next);
    usedPt = nextPt;
    previous = next;
  }
  return { end, strips: page };
}

// Returns the break of the lowest penalty at or before a limit, and of equal ones the last.
function breakAt(strips: readonly Strip[], start: number, limit: number): number {
  let best = limit;
  let dislike: number = strips[limit]?.breakBefore ?? BREAK.free;
  for (let at = limit - 1; at > start && dislike > BREAK.free; at--) {
    const here = strips[at]?.breakBefore ?? BREAK.free;
    if (here < dislike) [best, dislike] = [at, here];
  }
  return best;
}

/**
 * Divides a column of strips into pages, in one pass: each page is filled, then cut back to the best break.
 *
 * @param bodyPt height of an empty page
 */
export function paginate(strips: readonly Strip[], bodyPt: number): PageOfStrips[] {
  const pages: PageOfStrips[] = [];
  let start = 0;
  while (start < strips.length) {
    const { end, strips: filled } = fillPage(strips, start, bodyPt);
    if (end === start) {
      const [alone] = strips.slice(start, start + 1);
      if (alone) pages.push({ strips: [...filled, alone], overflows: alone.overflows ?? '' });
      start++;
      continue;
    }
    const next = end === strips.length ? end : breakAt(strips, start, end);
    pages.push({ strips: filled.slice(0, filled.length - (end - next)), overflows: null });
    start = next;
  }
  return pages.length > 0 ? pages : [{ strips: [], overflows: null }];
}
