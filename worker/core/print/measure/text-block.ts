import { type Markup, textOf } from '../parse/markup.ts';
import { BLOCK_STYLES, type BlockStyle } from '../style/block-style.ts';
import { textStyle } from '../style/text-style.ts';
import type { Item } from './item.ts';
import type { BlockRule, LayoutContext } from './layout-context.ts';
import { paragraph } from './paragraph.ts';
import { BREAK, held, indented, type Strip } from './strip.ts';
import { childTag } from './tag.ts';

/** Sets an element's text in a block style under its own structure element. The strip after a heading stays with it. */
export function styledText(block: Markup, style: BlockStyle, role: string, setting: LayoutContext): Strip[] {
  const { scale } = setting;
  const indentPt = style.indentPt * scale;
  const inner: LayoutContext = {
    ...setting,
    columnPt: Math.min(setting.columnPt, style.measurePt * scale) - indentPt,
    text: textStyle(style.face, style.sizePt, style.leadingPt, scale),
    tag: childTag(setting.tag, role),
  };
  const lines = indented(paragraph(block.children, 'left', inner), indentPt);
  const strips = style.keepWithNext ? held(lines, BREAK.never) : lines;
  return strips.map((each, i) => ({
    ...each,
    abovePt: i === 0 ? style.abovePt * scale : 0,
    belowPt: i === strips.length - 1 ? style.belowPt * scale : 0,
  }));
}

/** `<p>` and its classes. */
export const paragraphBlock: BlockRule = (block, setting) => {
  const name = (['lede', 'small', 'formula'] as const).find((each) => block.classes.has(each)) ?? 'p';
  return styledText(block, BLOCK_STYLES[name], 'P', setting);
};

/** `<h1>` to `<h3>`: a structure element, and a bookmark except for the third level. */
export const headingBlock: BlockRule = (block, setting) => {
  const name = block.name as 'h1' | 'h2' | 'h3';
  const level = Number(name.slice(1));
  const bookmark: Item[] = level < 3 ? [{ kind: 'bookmark', level, title: textOf(block) }] : [];
  const strips = styledText(block, BLOCK_STYLES[name], name.toUpperCase(), setting);
  return strips.map((each, i) => (i === 0 ? { ...each, items: [...bookmark, ...each.items] } : each));
};
