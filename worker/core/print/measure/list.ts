import { textWidthPt } from '../fonts/face.ts';
import { childElements } from '../parse/markup.ts';
import type { Item } from './item.ts';
import type { BlockRule, LayoutContext } from './layout-context.ts';
import { baselinePt } from './paragraph.ts';
import { indented, type Strip, spaced, withItem } from './strip.ts';
import { childTag, type Tag } from './tag.ts';

const INDENT_PT = 13;
const ITEM_GAP_PT = 2;

function marker(text: string, setting: LayoutContext, label: Tag | null, indentPt: number): Item {
  const { text: style } = setting;
  const widthPt = textWidthPt(text, style.face, style.sizePt);
  const piece = { text: `${text} `, style, widthPt, tag: label, link: null, pageOf: null };
  const base = baselinePt(style.leadingPt, style.sizePt);
  return {
    kind: 'line',
    xPt: 0,
    baselinePt: base,
    widthPt: indentPt - 4,
    align: text === '•' ? 'left' : 'right',
    pieces: [piece],
  };
}

/** `<ul>` and `<ol>`: each item with a hanging mark or number. */
export const listBlock: BlockRule = (block, setting, flow) => {
  const ordered = block.name === 'ol';
  const items = childElements(block);
  const tag = childTag(setting.tag, 'L', { numbering: ordered ? 'Decimal' : 'Disc' });
  const indentPt = (items.length > 99 ? 24 : ordered ? INDENT_PT + 5 : INDENT_PT) * setting.scale;
  const strips = items.flatMap((item, i): Strip[] => {
    const itemTag = childTag(tag, 'LI');
    const mark = marker(ordered ? `${i + 1}.` : '•', setting, childTag(itemTag, 'Lbl'), indentPt);
    const inside = {
      ...setting,
      columnPt: Math.min(setting.columnPt, 408 * setting.scale) - indentPt,
      tag: childTag(itemTag, 'LBody'),
    };
    const body = indented(flow(item.children, inside), indentPt);
    const id = item.attributes.id;
    const marked = withItem(body, mark);
    return spaced(id === undefined ? marked : withItem(marked, { kind: 'anchor', id }), 0, ITEM_GAP_PT * setting.scale);
  });
  return spaced(strips, 0, 6.5 * setting.scale);
};
