import type { Say } from '../../text/formatter.ts';
import type { Markup, MarkupNode } from '../parse/markup.ts';
import type { Picture } from '../picture/picture.ts';
import type { PrintFinding } from '../print-job.ts';
import type { TextStyle } from '../style/text-style.ts';
import type { Strip } from './strip.ts';
import type { Tag } from './tag.ts';

/** What a block is set in: the column, the text around it, the structure element above it. */
export interface LayoutContext {
  columnPt: number;
  /** The height of an empty page. */
  bodyPt: number;
  /** Of all type sizes and spaces: 1 but for cut-outs. */
  scale: number;
  text: TextStyle;
  tag: Tag | null;
  documentId: string;
  report: (finding: PrintFinding) => void;
  /** The picture of a source. */
  pictureOf: (source: string) => Picture;
  /** What stands on everything that nobody has released; empty where it is. */
  mark: string;
  /** Says what measuring adds of its own. */
  say: Say;
}

/** Measures a mixture of blocks and text: the measuring of a block's content, given to every block rule. */
export type Flow = (content: readonly MarkupNode[], setting: LayoutContext) => Strip[];

/** Measures one kind of block. */
export type BlockRule = (block: Markup, setting: LayoutContext, flow: Flow) => Strip[];
