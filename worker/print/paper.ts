/** A sheet and the rectangle that text is set in. Points; y counts down from the top edge. */
export interface Paper {
  widthPt: number;
  heightPt: number;
  leftPt: number;
  topPt: number;
  columnPt: number;
  bodyPt: number;
}

// How many points is one millimetre? 72 points an inch, 25.4 mm an inch (exact).
const POINTS_PER_MM = 72 / 25.4;

/** Millimetres in points. */
export function pointsFromMm(lengthMm: number): number {
  return lengthMm * POINTS_PER_MM;
}

// One design on two sheets: the side margins take up the difference in width, so that lines break alike.
const COLUMN_PT = pointsFromMm(174);
const TOP_PT = pointsFromMm(23);
const BOTTOM_PT = pointsFromMm(22);

function paper(widthPt: number, heightPt: number): Paper {
  return {
    widthPt,
    heightPt,
    leftPt: (widthPt - COLUMN_PT) / 2,
    topPt: TOP_PT,
    columnPt: COLUMN_PT,
    bodyPt: heightPt - TOP_PT - BOTTOM_PT,
  };
}

/** ISO 216 A4 and ANSI/ASME Y14.1 A. */
export const PAPERS = { A4: paper(595.28, 841.89), Letter: paper(612, 792) } as const;
