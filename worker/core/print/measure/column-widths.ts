/** How wide the content of a cell is at least, unbroken words, and at most, unbroken lines. */
export interface CellWidths {
  column: number;
  span: number;
  minPt: number;
  maxPt: number;
}

// A single over-long word, such as a serial number, is divided rather than let squeeze all other columns.
const LONGEST_WORD_SHARE = 0.36;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

// What a spanning cell asks beyond its columns' own widths is shared out equally among them.
function widen(widthsPt: number[], cell: CellWidths, askedPt: number): void {
  const covered = Array.from({ length: cell.span }, (_, i) => cell.column + i);
  const missingPt = askedPt - sum(covered.map((column) => widthsPt[column] ?? 0));
  if (missingPt <= 0) return;
  for (const column of covered) widthsPt[column] = (widthsPt[column] ?? 0) + missingPt / cell.span;
}

// The width at which columns can be cut so that all fit, while narrower ones keep theirs.
function commonLimitPt(widthsPt: readonly number[], availablePt: number): number {
  let roomPt = availablePt;
  let left = widthsPt.length;
  for (const widthPt of [...widthsPt].sort((a, b) => a - b)) {
    if (widthPt * left > roomPt) break;
    roomPt -= widthPt;
    left--;
  }
  return roomPt / Math.max(left, 1);
}

/**
 * Column widths as in the automatic table layout of CSS 2.1, 17.5.2.2: every column at least as wide as its longest word and, where there is
 * room, as its longest line. When even the words do not fit, the widest columns give way and their words are divided.
 *
 * @param stretch columns that take up what is left of `availablePt`; with none the table stays as wide as its content
 */
export function columnWidthsPt(
  columns: number,
  cells: readonly CellWidths[],
  availablePt: number,
  stretch: readonly boolean[],
): number[] {
  const minPt = Array.from({ length: columns }, () => 0);
  const maxPt = Array.from({ length: columns }, () => 0);
  for (const cell of [...cells].sort((a, b) => a.span - b.span)) {
    widen(minPt, cell, Math.min(cell.minPt, LONGEST_WORD_SHARE * availablePt * cell.span));
    widen(maxPt, cell, Math.max(cell.minPt, cell.maxPt));
  }
  const allMaxPt = sum(maxPt);
  if (sum(minPt) > availablePt) {
    const limitPt = commonLimitPt(minPt, availablePt);
    return minPt.map((each) => Math.min(each, limitPt));
  }
  // Where there is room for it, short content is not divided for the sake of long.
  const shortPt = commonLimitPt(maxPt, availablePt);
  const kept = minPt.map((each, i) => ((maxPt[i] ?? 0) <= shortPt ? (maxPt[i] ?? 0) : each));
  const least = sum(kept) <= availablePt ? kept : minPt;
  const allMinPt = sum(least);
  if (allMaxPt > availablePt) {
    const share = (availablePt - allMinPt) / (allMaxPt - allMinPt);
    return least.map((each, i) => each + ((maxPt[i] ?? each) - each) * share);
  }
  const elasticPt = sum(maxPt.filter((_, i) => stretch[i]));
  if (elasticPt === 0) return maxPt;
  return maxPt.map((most, i) => (stretch[i] ? most + ((availablePt - allMaxPt) * most) / elasticPt : most));
}
