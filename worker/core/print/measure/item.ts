import type { Annex, PageForm } from '../import/index.ts';
import type { Matrix } from '../matrix.ts';
import type { Picture } from '../picture/picture.ts';
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

/** A drawn item with its position. Points from the top left corner of its container; y counts down. */
export type Item =
  | { kind: 'line'; xPt: number; baselinePt: number; widthPt: number; align: Align; pieces: readonly Piece[] }
  | { kind: 'rule'; fromPt: Point; toPt: Point; weightPt: number; grey?: number; dashed?: boolean }
  | { kind: 'fill'; xPt: number; yPt: number; widthPt: number; heightPt: number; grey: number }
  | { kind: 'group'; xPt: number; yPt: number; items: readonly Item[] }
  | { kind: 'drawing'; xPt: number; yPt: number; scale: number; view: View; tag: Tag | null; shapes: readonly Shape[] }
  | PlacedPicture
  | { kind: 'anchor'; id: string }
  | { kind: 'bookmark'; level: number; title: string }
  | { kind: 'present'; tag: Tag };

/** A photograph, or a page of another PDF. */
export type PictureSource = { kind: 'image'; picture: Picture } | { kind: 'form'; annex: Annex; page: PageForm };

export interface PlacedPicture {
  kind: 'picture';
  xPt: number;
  yPt: number;
  widthPt: number;
  heightPt: number;
  source: PictureSource;
  /** From the plane of the source to the box, from its lower left corner with y up. */
  matrix: Matrix;
  tag: Tag | null;
}

export type Point = readonly [xPt: number, yPt: number];

/** Visible part of a drawing's own plane. */
export interface View {
  x: number;
  y: number;
  width: number;
  height: number;
}
