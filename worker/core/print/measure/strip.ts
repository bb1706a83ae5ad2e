import type { Item } from './item.ts';

/** Penalty of a page break before a strip. */
export const BREAK = { free: 0, inKeptSection: 1, orphan: 2, never: 3 } as const;
export type Break = (typeof BREAK)[keyof typeof BREAK];

/** A box around consecutive strips; if a page break cuts it, each part is a whole box. */
export interface Frame {
  padAbovePt: number;
  padBelowPt: number;
  decorate: (heightPt: number) => Item[];
}

/**
 * A horizontal strip of content that no page break cuts: a line, a table row, a figure. The column is a list of them.
 *
 * The gap between two strips is the larger of the one's `belowPt` and the other's `abovePt`, as margins collapse in CSS.
 */
export interface Strip {
  heightPt: number;
  abovePt: number;
  belowPt: number;
  items: readonly Item[];
  breakBefore: Break;
  frames: readonly Frame[];
  /** Strip at the head of a page that begins with this strip: the head of its table. */
  repeat: Strip | null;
  /** Name in the finding if the strip does not fit a page. */
  overflows?: string;
}

/** Returns a strip with defaults for all omitted values. */
export function strip(given: Pick<Strip, 'heightPt' | 'items'> & Partial<Strip>): Strip {
  return { abovePt: 0, belowPt: 0, breakBefore: BREAK.free, frames: [], repeat: null, ...given };
}

/** Returns the strips with min. space above the first and below the last. */
export function spaced(strips: readonly Strip[], abovePt: number, belowPt: number): Strip[] {
  return strips.map((each, i) => ({
    ...each,
    abovePt: i === 0 ? Math.max(abovePt, each.abovePt) : each.abovePt,
    belowPt: i === strips.length - 1 ? Math.max(belowPt, each.belowPt) : each.belowPt,
  }));
}

/** Returns the strips with a min. penalty of page breaks between them. */
export function held(strips: readonly Strip[], atLeast: Break): Strip[] {
  return strips.map((each, i) => (i === 0 ? each : { ...each, breakBefore: larger(each.breakBefore, atLeast) }));
}

/** Returns the strips with an item added to the first. */
export function withItem(strips: readonly Strip[], item: Item): Strip[] {
  return strips.map((each, i) => (i === 0 ? { ...each, items: [item, ...each.items] } : each));
}

/** Returns the strips moved to the right, with the frames around them. */
export function indented(strips: readonly Strip[], xPt: number): Strip[] {
  if (xPt === 0) return [...strips];
  // A frame stays one object on all the strips it encloses.
  const moved = new Map<Frame, Frame>();
  const move = (frame: Frame): Frame => {
    const decorate = (heightPt: number): Item[] => [group(xPt, frame.decorate(heightPt))];
    const known = moved.get(frame) ?? { ...frame, decorate };
    moved.set(frame, known);
    return known;
  };
  return strips.map((each) => ({ ...each, items: [group(xPt, each.items)], frames: each.frames.map(move) }));
}

function group(xPt: number, items: readonly Item[]): Item {
  return { kind: 'group', xPt, yPt: 0, items };
}

/** Returns the strips without space above the first and below the last. */
export function trimmed(strips: readonly Strip[]): Strip[] {
  return strips.map((each, i) => ({
    ...each,
    abovePt: i === 0 ? 0 : each.abovePt,
    belowPt: i === strips.length - 1 ? 0 : each.belowPt,
  }));
}

function larger(a: Break, b: Break): Break {
  return a > b ? a : b;
}
