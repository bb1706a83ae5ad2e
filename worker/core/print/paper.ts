import { PAPER_SIZES, type PaperSize } from '../units/paper-size.ts';

/** A sheet and its text area. Points; y counts down from the top edge. */
export interface Paper {
  widthPt: number;
  heightPt: number;
  leftPt: number;
  topPt: number;
  columnPt: number;
  bodyPt: number;
}

// Points per millimetre: 72 points per inch, 25.4 mm per inch (exact).
const POINTS_PER_MM = 72 / 25.4;

/** Converts millimetres to points. */
export function pointsFromMm(lengthMm: number): number {
  return lengthMm * POINTS_PER_MM;
}

// One design on all sheets: the side margins absorb the difference in width, so that lines break at the same words. A
// narrower sheet has a narrower column.
const COLUMN_PT = pointsFromMm(174);
const MIN_SIDE_PT = pointsFromMm(12);
const TOP_PT = pointsFromMm(23);
const BOTTOM_PT = pointsFromMm(22);

/** Returns the text area of a sheet. Content that does not fit it is a finding. */
export function paperOf(size: PaperSize): Paper {
  return textArea(PAPER_SIZES[size]);
}

/**
 * Returns the text area of a sheet of any size.
 *
 * @throws Error if nothing is left between the margins
 */
export function textArea({ widthPt, heightPt }: Pick<Paper, 'widthPt' | 'heightPt'>): Paper {
  const columnPt = Math.min(COLUMN_PT, widthPt - 2 * MIN_SIDE_PT);
  if (columnPt <= 0 || heightPt <= TOP_PT + BOTTOM_PT)
    throw new Error(
      `Cannot print: the sheet must be larger than its margins: current value is ${widthPt} × ${heightPt} pt`,
    );
  return {
    widthPt,
    heightPt,
    leftPt: (widthPt - columnPt) / 2,
    topPt: TOP_PT,
    columnPt,
    bodyPt: heightPt - TOP_PT - BOTTOM_PT,
  };
}
