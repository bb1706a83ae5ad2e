import type { TextStyle } from '../style/text-style.ts';
import type { Shape } from './drawing-shape.ts';
import type { Tag } from './tag.ts';

/** A piece of a line in one style. A piece without a tag is an artefact. `pageOf` names the document whose first page it prints. */
export interface Piece {
  text: string;
  style: TextStyle;
  widthPt: number;
  tag: Tag | null;
  link: string | null;
  pageOf: string | null;
}

export type Align = 'left' | 'right' | 'centre';

/** Something with a place. Points from the top left corner of what holds it; y counts down. */
export type Item =
  | { kind: 'line'; xPt: number; baselinePt: number; widthPt: number; align: Align; pieces: readonly Piece[] }
  | { kind: 'rule'; fromPt: Point; toPt: Point; weightPt: number; grey?: number; dashed?: boolean }
  | { kind: 'fill'; xPt: number; yPt: number; widthPt: number; heightPt: number; grey: number }
  | { kind: 'group'; xPt: number; yPt: number; items: readonly Item[] }
  | { kind: 'drawing'; xPt: number; yPt: number; scale: number; view: View; tag: Tag | null; shapes: readonly Shape[] }
  | { kind: 'anchor'; id: string }
  | { kind: 'bookmark'; level: number; title: string }
  | { kind: 'present'; tag: Tag };

export type Point = readonly [xPt: number, yPt: number];

/** The part of a drawing's own plane that is shown. */
export interface View {
  x: number;
  y: number;
  width: number;
  height: number;
}
