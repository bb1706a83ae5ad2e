import type { Item } from './item.ts';
import type { Frame, Strip } from './strip.ts';

/** Strips set one below another. */
export interface Stack {
  heightPt: number;
  items: readonly Item[];
}

const sum = (lengthsPt: readonly number[]): number => lengthsPt.reduce((total, each) => total + each, 0);

/** Returns the space between a strip and the one before it: padding of frames that close and open, and the collapsed margin. */
export function gapPt(previous: Strip | null, next: Strip): number {
  const before = previous?.frames ?? [];
  const closing = before.filter((frame) => !next.frames.includes(frame));
  const opening = next.frames.filter((frame) => !before.includes(frame));
  const marginPt = previous ? Math.max(previous.belowPt, next.abovePt) : 0;
  return sum(closing.map((f) => f.padBelowPt)) + marginPt + sum(opening.map((f) => f.padAbovePt));
}

/** Returns the space below a strip that ends a page or a column: padding of the frames around it. */
export function closingPt(last: Strip | null): number {
  return sum((last?.frames ?? []).map((frame) => frame.padBelowPt));
}

/** Returns the height of strips set one below another. */
export function heightOf(strips: readonly Strip[]): number {
  let previous: Strip | null = null;
  let totalPt = 0;
  for (const next of strips) {
    totalPt += gapPt(previous, next) + next.heightPt;
    previous = next;
  }
  return totalPt + closingPt(previous);
}

/** Sets strips one below another, with frames drawn beneath their content. */
export function stack(strips: readonly Strip[]): Stack {
  const boxes: Item[] = [];
  const content: Item[] = [];
  const opened = new Map<Frame, number>();
  let yPt = 0;
  let previous: Strip | null = null;
  const close = (frames: readonly Frame[]): void => {
    for (const frame of [...frames].reverse()) {
      yPt += frame.padBelowPt;
      const topPt = opened.get(frame) ?? 0;
      boxes.push({ kind: 'group', xPt: 0, yPt: topPt, items: frame.decorate(yPt - topPt) });
    }
  };
  for (const next of strips) {
    const before: readonly Frame[] = previous?.frames ?? [];
    close(before.filter((frame) => !next.frames.includes(frame)));
    yPt += previous ? Math.max(previous.belowPt, next.abovePt) : 0;
    for (const frame of next.frames) {
      if (before.includes(frame)) continue;
      opened.set(frame, yPt);
      yPt += frame.padAbovePt;
    }
    content.push({ kind: 'group', xPt: 0, yPt, items: next.items });
    yPt += next.heightPt;
    previous = next;
  }
  close(previous?.frames ?? []);
  return { heightPt: yPt, items: [...boxes.reverse(), ...content] };
}
