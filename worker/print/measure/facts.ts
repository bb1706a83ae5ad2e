import { childElements, type Markup } from '../parse/markup.ts';
import { RULE_PT } from '../style/block-style.ts';
import { textStyle } from '../style/text-style.ts';
import type { Item } from './item.ts';
import type { BlockRule, Flow, Setting } from './setting.ts';
import { type Cell, sideBySide } from './side-by-side.ts';
import { BREAK, type Strip, spaced, strip, withItem } from './strip.ts';
import { childTag, type Tag } from './tag.ts';

/** The label and the values of one group of a description list. */
export interface Fact {
  labels: Markup[];
  values: Markup[];
  id: string | undefined;
}

const GUTTER_PT = 19.5;
const LABEL_PT = 96;
const PAD_PT = 2;

/** The groups of a description list. */
export function factsOf(list: Markup): Fact[] {
  return childElements(list).map((group) => {
    if (group.name !== 'div')
      throw new Error(`Cannot typeset <dl>: groups must be <div>: current value is <${group.name}>`);
    const parts = childElements(group);
    return {
      labels: parts.filter((part) => part.name === 'dt'),
      values: parts.filter((part) => part.name === 'dd'),
      id: group.attributes['id'],
    };
  });
}

/** The label of a fact in small type and its values, measured apart, under structure elements of one list item. */
export function factStrips(
  fact: Fact,
  list: Tag | null,
  widthsPt: readonly [number, number],
  setting: Setting,
  flow: Flow,
): [Strip[], Strip[]] {
  const { scale } = setting;
  const itemTag = childTag(list, 'LI');
  const small = { ...textStyle('regular', 8, setting.text.leadingPt / scale, scale) };
  const label = { ...setting, columnPt: widthsPt[0], text: small, tag: childTag(itemTag, 'Lbl') };
  const value = { ...setting, columnPt: widthsPt[1], tag: childTag(itemTag, 'LBody') };
  const labels = fact.labels.flatMap((part) => flow(part.children, label));
  const values = fact.values.flatMap((part) => {
    const text = part.classes.has('out') ? { ...setting.text, face: 'semibold' as const } : setting.text;
    return flow(part.children, { ...value, text });
  });
  return [fact.id === undefined ? labels : withItem(labels, { kind: 'anchor', id: fact.id }), values];
}

function cellsOf(fact: Fact, at: number, columnPt: number, list: Tag | null, setting: Setting, flow: Flow): Cell[] {
  const labelPt = Math.min(LABEL_PT * setting.scale, columnPt * 0.42);
  const gapPt = 6;
  const [labels, values] = factStrips(fact, list, [labelPt, columnPt - labelPt - gapPt], setting, flow);
  return [
    { xPt: at, strips: labels },
    { xPt: at + labelPt + gapPt, strips: values },
  ];
}

/** `<dl>`: pairs of label and value over hairlines; class `facts` sets two pairs a row unless it is `wide`. */
export const factsBlock: BlockRule = (block, setting, flow) => {
  const facts = factsOf(block);
  const paired = block.classes.has('facts') && !block.classes.has('wide');
  const { columnPt, scale } = setting;
  const tag = childTag(setting.tag, 'L', { numbering: 'None' });
  const abreast = paired && columnPt > 300 ? 2 : 1;
  const widthPt = (columnPt - (abreast - 1) * GUTTER_PT) / abreast;
  const padPt = PAD_PT * scale;
  const rows: Strip[] = [];
  for (let i = 0; i < facts.length; i += abreast) {
    const row = facts.slice(i, i + abreast);
    const cells = row.flatMap((fact, n) => cellsOf(fact, n * (widthPt + GUTTER_PT), widthPt, tag, setting, flow));
    const slices = sideBySide(cells, setting.bodyPt - 2 * padPt);
    slices.forEach((slice, n) => {
      const heightPt = slice.heightPt + 2 * padPt;
      const rules =
        n < slices.length - 1 ? [] : row.map((_, place) => underline(place * (widthPt + GUTTER_PT), widthPt, heightPt));
      const items: Item[] = [{ kind: 'group', xPt: 0, yPt: padPt, items: slice.items }, ...rules];
      const orphan = i === abreast || i + abreast >= facts.length;
      rows.push(strip({ heightPt, items, breakBefore: orphan && i > 0 ? BREAK.orphan : BREAK.free }));
    });
  }
  return spaced(rows, 3 * scale, 9.75 * scale);
};

function underline(xPt: number, widthPt: number, yPt: number): Item {
  return { kind: 'rule', fromPt: [xPt, yPt], toPt: [xPt + widthPt, yPt], weightPt: RULE_PT.hair };
}
