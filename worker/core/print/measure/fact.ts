import { childElements, type Markup } from '../parse/markup.ts';
import { inlineStyle, isRunningText, type TextStyle, textStyle } from '../style/text-style.ts';
import type { Flow, LayoutContext } from './layout-context.ts';
import { baselinePt, paragraph } from './paragraph.ts';
import { type Strip, withItem } from './strip.ts';
import { childTag, type Tag } from './tag.ts';

/** Label and values of one group of a description list. */
export interface Fact {
  labels: Markup[];
  values: Markup[];
  id: string | undefined;
}

/** Returns the groups of a description list. */
export function factsOf(list: Markup): Fact[] {
  return childElements(list).map((group) => {
    if (group.name !== 'div')
      throw new Error(`Cannot typeset <dl>: groups must be <div>: current value is <${group.name}>`);
    const parts = childElements(group);
    return {
      labels: parts.filter((part) => part.name === 'dt'),
      values: parts.filter((part) => part.name === 'dd'),
      id: group.attributes.id,
    };
  });
}

/** Returns the style of labels: small, on the baseline of the larger value next to them. */
export function labelText({ text, scale }: LayoutContext): TextStyle {
  const small = textStyle('regular', 8, text.leadingPt / scale, scale);
  // Lines centre their own capitals; the label is lowered by the difference.
  return { ...small, risePt: baselinePt(0, small.sizePt) - baselinePt(0, text.sizePt) };
}

/** Measures the label of a fact in small type and its values separately, under structure elements of one list item. */
export function factStrips(
  fact: Fact,
  list: Tag | null,
  widthsPt: readonly [number, number],
  setting: LayoutContext,
  flow: Flow,
): [Strip[], Strip[]] {
  const itemTag = childTag(list, 'LI');
  const label = { ...setting, columnPt: widthsPt[0], text: labelText(setting), tag: childTag(itemTag, 'Lbl') };
  const value = { ...setting, columnPt: widthsPt[1], tag: childTag(itemTag, 'LBody') };
  const labels = fact.labels.flatMap((part) => flow(part.children, label));
  const values = fact.values.flatMap((part) => {
    const inside = { ...value, text: inlineStyle(part, setting.text) };
    return isRunningText(part.children) ? paragraph(part.children, 'left', inside) : flow(part.children, inside);
  });
  return [fact.id === undefined ? labels : withItem(labels, { kind: 'anchor', id: fact.id }), values];
}
