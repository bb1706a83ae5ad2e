import { pointsFromMm } from '../paper.ts';
import { textOf } from '../parse/markup.ts';
import { RULE_PT } from '../style/block-style.ts';
import { textStyle } from '../style/text-style.ts';
import { outline } from './aside.ts';
import type { Item, Point } from './item.ts';
import type { BlockRule } from './setting.ts';
import { stack } from './stack.ts';
import { strip } from './strip.ts';
import { childTag } from './tag.ts';

const SCALE = 0.86;
const PADDING_PT = pointsFromMm(5);
const MARK_PT = pointsFromMm(4);
const MARK_GAP_PT = pointsFromMm(1);

// Two short rules outside each corner, in line with the edges, to lay a blade along.
function cornerMarks(widthPt: number, heightPt: number): Item[] {
  const corners: readonly (readonly [x: number, y: number, outX: number, outY: number])[] = [
    [0, 0, -1, -1],
    [widthPt, 0, 1, -1],
    [widthPt, heightPt, 1, 1],
    [0, heightPt, -1, 1],
  ];
  const rule = (fromPt: Point, toPt: Point): Item => ({ kind: 'rule', fromPt, toPt, weightPt: RULE_PT.medium });
  return corners.flatMap(([x, y, outX, outY]) => [
    rule([x + outX * MARK_GAP_PT, y], [x + outX * MARK_PT, y]),
    rule([x, y + outY * MARK_GAP_PT], [x, y + outY * MARK_PT]),
  ]);
}

function lengthPt(value: string | undefined): number {
  const lengthMm = Number(value);
  if (!(lengthMm > 0))
    throw new Error(
      `Cannot typeset cut-out: data-width-mm and data-height-mm must be positive: current value is ${value}`,
    );
  return pointsFromMm(lengthMm);
}

/** `<div class="cut">`: a piece of true size to cut out of the page. What does not fit it is left out and reported. */
export const cutOutBlock: BlockRule = (block, setting, flow) => {
  const widthPt = lengthPt(block.attributes['data-width-mm']);
  const heightPt = lengthPt(block.attributes['data-height-mm']);
  const inside = {
    ...setting,
    columnPt: widthPt - 2 * PADDING_PT,
    bodyPt: heightPt - 2 * PADDING_PT,
    scale: SCALE,
    text: textStyle('regular', 9.5, 12.5, SCALE),
    tag: childTag(setting.tag, 'Div'),
  };
  const strips = flow(block.children, inside);
  const fits = (count: number): boolean => stack(strips.slice(0, count)).heightPt <= inside.bodyPt + 0.01;
  let shown = strips.length;
  while (shown > 0 && !fits(shown)) shown--;
  if (shown < strips.length || widthPt > setting.columnPt + 0.01) {
    const context = textOf(block).slice(0, 60);
    setting.report({ code: 'CONTENT_DOES_NOT_FIT', documentId: setting.documentId, context });
  }
  const content: Item = { kind: 'group', xPt: PADDING_PT, yPt: PADDING_PT, items: stack(strips.slice(0, shown)).items };
  const marks = [...outline(widthPt, heightPt, RULE_PT.hair, true), ...cornerMarks(widthPt, heightPt)];
  const xPt = Math.max(0, Math.min(MARK_PT, setting.columnPt - widthPt));
  const items: Item[] = [{ kind: 'group', xPt, yPt: MARK_PT, items: [...marks, content] }];
  const gapPt = 6.5;
  return [
    strip({
      heightPt: heightPt + 2 * MARK_PT,
      abovePt: gapPt,
      belowPt: gapPt,
      items,
      overflows: textOf(block).slice(0, 60),
    }),
  ];
};
