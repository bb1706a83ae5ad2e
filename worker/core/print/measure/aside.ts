import { BLOCK_GAP_PT, RULE_PT } from '../style/block-style.ts';
import type { Item, Point } from './item.ts';
import type { BlockRule } from './layout-context.ts';
import { heightOf } from './stack.ts';
import { BREAK, type Frame, held, indented, spaced, trimmed } from './strip.ts';
import { childTag } from './tag.ts';

interface BoxStyle {
  outlinePt: number;
  barPt: number;
  grey: number;
}

// A caution must differ from a note in any copy: by its heavy bar and full outline, never by shade.
const BOXES: Readonly<Record<string, BoxStyle>> = {
  caution: { outlinePt: RULE_PT.medium, barPt: 4, grey: 1 },
  note: { outlinePt: 0, barPt: 1, grey: 0.955 },
  mark: { outlinePt: 1.4, barPt: 0, grey: 1 },
};

const PAD_X_PT = 10;
const PAD_Y_PT = 6;

/** Returns the outline of a rectangle as rules; horizontal ones extend by half their weight, so that the corners are complete. */
export function outline(widthPt: number, heightPt: number, weightPt: number, dashed = false): Item[] {
  const outPt = weightPt / 2;
  const rule = (fromPt: Point, toPt: Point): Item => ({ kind: 'rule', fromPt, toPt, weightPt, dashed });
  return [
    rule([-outPt, 0], [widthPt + outPt, 0]),
    rule([widthPt, 0], [widthPt, heightPt]),
    rule([-outPt, heightPt], [widthPt + outPt, heightPt]),
    rule([0, 0], [0, heightPt]),
  ];
}

function boxItems(style: BoxStyle, widthPt: number, heightPt: number): Item[] {
  const items: Item[] = [];
  if (style.grey < 1) items.push({ kind: 'fill', xPt: 0, yPt: 0, widthPt, heightPt, grey: style.grey });
  if (style.barPt > 0) items.push({ kind: 'fill', xPt: 0, yPt: 0, widthPt: style.barPt, heightPt, grey: 0 });
  return style.outlinePt > 0 ? [...items, ...outline(widthPt, heightPt, style.outlinePt)] : items;
}

/** `<aside>`: a box as wide as the column, not divided if it fits a page. */
export const asideBlock: BlockRule = (block, setting, flow) => {
  const style = BOXES[['caution', 'mark'].find((name) => block.classes.has(name)) ?? 'note'];
  if (!style) return [];
  const { scale, columnPt } = setting;
  const text = block.classes.has('mark') ? { ...setting.text, face: 'semibold' as const } : setting.text;
  const padXPt = PAD_X_PT * scale;
  const inside = { ...setting, text, columnPt: columnPt - 2 * padXPt, tag: childTag(setting.tag, 'Div') };
  const frame: Frame = {
    padAbovePt: PAD_Y_PT * scale,
    padBelowPt: PAD_Y_PT * scale,
    decorate: (heightPt) => boxItems(style, columnPt, heightPt),
  };
  const strips = indented(flow(block.children, inside), padXPt);
  const boxed = trimmed(strips).map((each) => ({ ...each, frames: [frame, ...each.frames] }));
  const whole = heightOf(boxed) <= setting.bodyPt ? held(boxed, BREAK.inKeptSection) : boxed;
  return spaced(whole, BLOCK_GAP_PT * scale, BLOCK_GAP_PT * scale);
};
