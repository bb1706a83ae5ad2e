import { textWidthPt } from '../fonts/face.ts';
import { horizontalRule } from '../measure/horizontal-rule.ts';
import type { Align, Item } from '../measure/item.ts';
import type { Paper } from '../paper.ts';
import { RULE_PT } from '../style/block-style.ts';
import { textStyle } from '../style/text-style.ts';

/** Text above and below the body of one page. */
export interface RunningHeads {
  headLeft: string;
  headCentre: string;
  headRight: string;
  footLeft: string;
  footCentre: string;
  footRight: string;
  /** The mark in words, on a separate line at the foot; empty for none. */
  mark: string;
}

const STYLE = textStyle('regular', 7.5, 10, 1);
const STRONG = textStyle('semibold', 8.5, 10, 1);
const HEAD_BASELINE_PT = 38;
const FOOT_RULE_PT = 44;
const GAP_PT = 12;

// Shortens a running head, which only repeats the content of the page.
function shortened(text: string, roomPt: number, style: typeof STYLE): string {
  const width = (part: string): number => textWidthPt(part, style.face, style.sizePt);
  if (width(text) <= roomPt) return text;
  let end = text.length;
  while (end > 0 && width(`${text.slice(0, end)}…`) > roomPt) end--;
  return `${text.slice(0, end).trimEnd()}…`;
}

/** Position of a text on its line: `columnPt` is the length of the line, `roomPt` the max. width of the text. */
interface LinePlace {
  align: Align;
  baselinePt: number;
  columnPt: number;
  roomPt: number;
}

function place(text: string, { align, baselinePt, columnPt, roomPt }: LinePlace, style = STYLE): Item[] {
  if (text === '' || roomPt <= 0) return [];
  const shown = shortened(text, roomPt, style);
  const widthPt = textWidthPt(shown, style.face, style.sizePt);
  const piece = { text: shown, style, widthPt, tag: null, link: null, pageOf: null };
  return [{ kind: 'line', xPt: 0, baselinePt, widthPt: columnPt, align, pieces: [piece] }];
}

function row(texts: readonly [string, string, string], baselinePt: number, columnPt: number): Item[] {
  const [left, centre, right] = texts;
  const widthPt = (text: string): number => textWidthPt(text, STYLE.face, STYLE.sizePt);
  const rightPt = Math.min(widthPt(right), columnPt * 0.4);
  const leftPt = Math.min(widthPt(left), columnPt * 0.4);
  const besidePt = Math.max(leftPt, rightPt) + GAP_PT;
  return [
    ...place(left, { align: 'left', baselinePt, columnPt, roomPt: leftPt + 0.01 }),
    ...place(centre, { align: 'centre', baselinePt, columnPt, roomPt: columnPt - 2 * besidePt }),
    ...place(right, { align: 'right', baselinePt, columnPt, roomPt: rightPt + 0.01 }),
  ];
}

/** Returns head and foot of a page, placed from the left edge of the text area and the top edge of the sheet. */
export function runningHeads(heads: RunningHeads, paper: Paper): Item[] {
  const { columnPt, heightPt } = paper;
  const footPt = heightPt - FOOT_RULE_PT;
  return [
    ...row([heads.headLeft, heads.headCentre, heads.headRight], HEAD_BASELINE_PT, columnPt),
    ...horizontalRule(0, HEAD_BASELINE_PT + 5, columnPt, RULE_PT.hair),
    ...horizontalRule(0, footPt, columnPt, RULE_PT.hair),
    ...row([heads.footLeft, heads.footCentre, heads.footRight], footPt + 11, columnPt),
    ...place(heads.mark, { align: 'centre', baselinePt: footPt + 21.5, columnPt, roomPt: columnPt }, STRONG),
  ];
}
