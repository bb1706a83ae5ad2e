/** Sizes of sheets in points, as usual in PDF: ISO 216 A4, ANSI/ASME Y14.1 A. A new size is one line here. */
export const PAPER_SIZES = {
  A4: { widthPt: 595.28, heightPt: 841.89 },
  Letter: { widthPt: 612, heightPt: 792 },
} as const;

/** Name of a sheet in the record, the API and the command. */
export type PaperSize = keyof typeof PAPER_SIZES;

export const DEFAULT_PAPER: PaperSize = 'A4';

const isPaperSize = (name: string): name is PaperSize => Object.hasOwn(PAPER_SIZES, name);

/** Names of all sheets, the default first. */
export const PAPER_NAMES: readonly [PaperSize, ...PaperSize[]] = [
  DEFAULT_PAPER,
  ...Object.keys(PAPER_SIZES)
    .filter(isPaperSize)
    .filter((name) => name !== DEFAULT_PAPER),
];

/** Names of all sheets as a sentence lists them: `A4 or Letter`. */
export const PAPER_CHOICE = `${PAPER_NAMES.slice(0, -1).join(', ')} or ${PAPER_NAMES.at(-1)}`;

/** Returns the sheet of a name; undefined if unknown. */
export function paperSize(name: string | null | undefined): PaperSize | undefined {
  return PAPER_NAMES.find((known) => known === name);
}
