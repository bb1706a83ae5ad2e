import type { Markup } from '../parse/markup.ts';
import { RULE_PT } from '../style/block-style.ts';
import { type Fact, factStrips, factsOf } from './fact.ts';
import { horizontalRule } from './horizontal-rule.ts';
import type { BlockRule, Flow, LayoutContext } from './layout-context.ts';
import { sideBySide } from './side-by-side.ts';
import { BREAK, held, type Strip, spaced, strip } from './strip.ts';
import { childTag, type Tag } from './tag.ts';

const SIGNING_PT = 28;
const MIN_FIELD_PT = 68;
const MAX_FIELDS = 4;
const GUTTER_PT = 13;

function fieldRow(
  facts: readonly Fact[],
  tag: Tag | null,
  fields: number,
  setting: LayoutContext,
  flow: Flow,
): Strip[] {
  const widthPt = (setting.columnPt - (fields - 1) * GUTTER_PT) / fields;
  const cells = facts.map((fact, i) => {
    const [labels, values] = factStrips(fact, tag, [widthPt, widthPt], setting, flow);
    return { xPt: i * (widthPt + GUTTER_PT), strips: [...labels, ...values] };
  });
  return sideBySide(cells, setting.bodyPt).map((slice) => strip({ ...slice, belowPt: 4 * setting.scale }));
}

function fieldsBlock(list: Markup, setting: LayoutContext, flow: Flow): Strip[] {
  const facts = factsOf(list);
  const tag = childTag(setting.tag, 'L', { numbering: 'None' });
  const room = Math.floor((setting.columnPt + GUTTER_PT) / (MIN_FIELD_PT * setting.scale + GUTTER_PT));
  const fields = Math.max(1, Math.min(MAX_FIELDS, facts.length, room));
  const heightPt = SIGNING_PT * setting.scale;
  const line = strip({
    heightPt: heightPt + 3,
    items: horizontalRule(0, heightPt, setting.columnPt, RULE_PT.medium),
  });
  const rows: Strip[] = [];
  for (let i = 0; i < facts.length; i += fields) {
    rows.push(...fieldRow(facts.slice(i, i + fields), tag, fields, setting, flow));
  }
  return [line, ...rows];
}

/** `<div class="signature">`: space to sign above a line, and the list with the signer's data below it; never divided. */
export const signatureBlock: BlockRule = (block, setting, flow) => {
  const inside = {
    ...setting,
    columnPt: Math.min(setting.columnPt, 440 * setting.scale),
    tag: childTag(setting.tag, 'Div'),
  };
  const strips = block.children.flatMap((child) =>
    typeof child !== 'string' && child.name === 'dl' ? fieldsBlock(child, inside, flow) : flow([child], inside),
  );
  return spaced(held(strips, BREAK.orphan), 8 * setting.scale, 8 * setting.scale);
};
