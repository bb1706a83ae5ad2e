/** What every maker sets on a page: a heading, two paragraphs, a table of 35 rows and 6 columns, and a plot. */
export interface PageOfContent {
  heading: string;
  paragraphs: readonly string[];
  head: readonly string[];
  rows: readonly (readonly string[])[];
  /** Places of the plot in points, y down, within 400 by 60. */
  plot: readonly (readonly [number, number])[];
}

const SENTENCES = 'The instrument correction is applied before tare is taken off, and the sum is not rounded. '
  .repeat(3)
  .trim();

/** The content of a document of so many pages. */
export function contentOf(pages: number): PageOfContent[] {
  return Array.from({ length: pages }, (_, page) => ({
    heading: `Part ${page + 1}`,
    paragraphs: [SENTENCES, SENTENCES],
    head: ['Item', ...Array.from({ length: 5 }, (_, column) => `Reading ${column + 1}`)],
    rows: Array.from({ length: 35 }, (_, row) => [
      `Item ${row + 1}`,
      ...Array.from({ length: 5 }, (_, column) => ((row + 1) * (column + 1) * 1.37 + page).toFixed(2)),
    ]),
    plot: Array.from({ length: 9 }, (_, i) => [i * 50, 10 + ((i * 37 + page * 11) % 45)] as const),
  }));
}

/** Sizes and places that all share, in points. */
export const LOOK = { marginPt: 50, columnPt: 495, headingPt: 16, textPt: 9, cellPt: 8, rowPt: 13 } as const;
