// CSS shares space in proportion, which breaks `item 12` in favour of prose. So columns whose longest line is below
// the common limit keep it, and the others share the rest.

/** Min. width of a cell's content (unbroken words), and its max. width (unbroken lines). */
export interface CellWidths {
  column: number;
  span: number;
  minPt: number;
  maxPt: number;
}

// A single over-long word, such as a serial number, is divided so that it does not squeeze all other columns.
const LONGEST_WORD_SHARE = 0.36;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

// Shares the width that a spanning cell needs beyond its columns' own widths equally among them.
function widen(widthsPt: number[], cell: CellWidths, askedPt: number): void {
  const covered = Array.from({ length: cell.span }, (_, i) => cell.column + i);
  const missingPt = askedPt - sum(covered.map((column) => widthsPt[column] ?? 0));
  if (missingPt <= 0) return;
  for (const column of covered) widthsPt[column] = (widthsPt[column] ?? 0) + missingPt / cell.span;
}

// Returns the limit to which wide columns are cut so that all fit, while narrower ones keep their widths.
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
 * Returns column widths as in the automatic table layout of CSS 2.1, 17.5.2.2: every column min. as wide as its longest
 * word and, if space permits, as its longest line. If even the words do not fit, the widest columns shrink and their
 * words are divided.
 *
 * @param stretch columns that take the rest of `availablePt`; without any the table stays as wide as its content
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
  // If space permits, short content is not divided in favour of long content.
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
