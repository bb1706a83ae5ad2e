import type { Say } from '../../text/formatter.ts';
import type { Markup, MarkupNode } from '../parse/markup.ts';
import type { Picture } from '../picture/picture.ts';
import type { PrintFinding } from '../print-job.ts';
import type { TextStyle } from '../style/text-style.ts';
import type { Strip } from './strip.ts';
import type { Tag } from './tag.ts';

/** Layout context of a block: the column, the text around it, the structure element above it. */
export interface LayoutContext {
  columnPt: number;
  /** Height of an empty page. */
  bodyPt: number;
  /** Factor of all type sizes and spaces: 1 except for cut-outs. */
  scale: number;
  text: TextStyle;
  tag: Tag | null;
  documentId: string;
  report: (finding: PrintFinding) => void;
  /** Returns the picture of a source. */
  pictureOf: (source: string) => Picture;
  /** Mark of an unreleased pack; empty for a released one. */
  mark: string;
  /** Translates the texts that measuring adds. */
  say: Say;
}

/** Measures a mixture of blocks and text: every block rule receives it for the block's content. */
export type Flow = (content: readonly MarkupNode[], setting: LayoutContext) => Strip[];

/** Measures one kind of block. */
export type BlockRule = (block: Markup, setting: LayoutContext, flow: Flow) => Strip[];
