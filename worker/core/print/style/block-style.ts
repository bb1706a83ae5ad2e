import type { FaceName } from '../fonts/face.ts';

/** Style and spacing of a block of text, in points before scaling. `keepWithNext` keeps a heading with the text below it. */
export interface BlockStyle {
  face: FaceName;
  sizePt: number;
  leadingPt: number;
  abovePt: number;
  belowPt: number;
  indentPt: number;
  keepWithNext: boolean;
  /** Max. line length: prose wider than about 90 characters is hard to read. */
  measurePt: number;
}

const PROSE_PT = 408;
const UNBOUNDED_PT = 10_000;

const prose: BlockStyle = {
  face: 'regular',
  sizePt: 9.5,
  leadingPt: 13,
  abovePt: 0,
  belowPt: 6.5,
  indentPt: 0,
  keepWithNext: false,
  measurePt: PROSE_PT,
};
const heading: BlockStyle = { ...prose, face: 'semibold', keepWithNext: true, measurePt: UNBOUNDED_PT };

/** Spacing is in halves of the 13 point line. */
export const BLOCK_STYLES = {
  h1: { ...heading, sizePt: 20, leadingPt: 26, belowPt: 6.5 },
  h2: { ...heading, sizePt: 12.5, leadingPt: 16, abovePt: 19.5, belowPt: 5 },
  h3: { ...heading, sizePt: 10, leadingPt: 13, abovePt: 13, belowPt: 3 },
  p: prose,
  lede: { ...prose, sizePt: 11, leadingPt: 15, belowPt: 9, measurePt: 460 },
  small: { ...prose, sizePt: 8, leadingPt: 11, measurePt: 440 },
  formula: { ...prose, indentPt: 13 },
  caption: { ...heading, sizePt: 9, leadingPt: 12, belowPt: 3.5 },
  figcaption: { ...prose, sizePt: 8.5, leadingPt: 11.5, abovePt: 4, measurePt: PROSE_PT },
} as const satisfies Record<string, BlockStyle>;

/** Space above and below blocks that are not plain text, in points. */
export const BLOCK_GAP_PT = 9.75;

/** Grey of hairlines between rows: they guide the eye and carry no meaning, so a copy may lose them. */
export const HAIR_GREY = 0.55;

/** Widths of rules in points: the outer rules of a table, its inner rules, hairlines. */
export const RULE_PT = { heavy: 0.9, medium: 0.5, hair: 0.3 } as const;
