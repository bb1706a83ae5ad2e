import type { Item } from './item.ts';
import { gapPt, type Stack, stack } from './stack.ts';
import type { Strip } from './strip.ts';

/** Strips in a cell of a row, with the cell's left edge. */
export interface Cell {
  xPt: number;
  strips: readonly Strip[];
}

// Returns the number of strips, min. one, that fit a height from an index on.
function countFitting(strips: readonly Strip[], from: number, heightPt: number): number {
  let usedPt = 0;
  for (let at = from; at < strips.length; at++) {
    const next = strips[at];
    if (!next) break;
    usedPt += (at === from ? 0 : gapPt(strips[at - 1] ?? null, next)) + next.heightPt;
    if (usedPt > heightPt && at > from) return at - from;
  }
  return strips.length - from;
}

/**
 * Sets cells side by side in slices, each up to `maxPt` high: one slice unless a cell is longer. Items are placed from
 * the top of the slice; `bottom` cells are aligned with its foot.
 */
export function sideBySide(cells: readonly Cell[], maxPt: number, stand: 'top' | 'bottom' = 'top'): Stack[] {
  const slices: Stack[] = [];
  const done = cells.map(() => 0);
  do {
    const parts = cells.map((cell, i): Stack => {
      const from = done[i] ?? 0;
      const count = countFitting(cell.strips, from, maxPt);
      done[i] = from + count;
      return stack(cell.strips.slice(from, from + count));
    });
    const heightPt = Math.max(0, ...parts.map((part) => part.heightPt));
    const items = parts.map((part, i): Item => {
      const yPt = stand === 'top' ? 0 : heightPt - part.heightPt;
      return { kind: 'group', xPt: cells[i]?.xPt ?? 0, yPt, items: part.items };
    });
    slices.push({ heightPt, items });
  } while (cells.some((cell, i) => (done[i] ?? 0) < cell.strips.length));
  return slices;
}
