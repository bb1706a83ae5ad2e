import type { Markup } from '../parse/markup.ts';
import { RULE_PT } from '../style/block-style.ts';
import { contentWidthsPt } from '../text/break-lines.ts';
import { type Fact, factStrips, factsOf, labelText } from './fact.ts';
import { horizontalRule } from './horizontal-rule.ts';
import type { Item } from './item.ts';
import type { BlockRule, Flow, LayoutContext } from './layout-context.ts';
import { wordsIn } from './paragraph.ts';
import { type Cell, sideBySide } from './side-by-side.ts';
import { BREAK, type Strip, spaced, strip } from './strip.ts';
import { childTag, type Tag } from './tag.ts';

const GUTTER_PT = 19.5;
const LABEL_GAP_PT = 9;
const MAX_LABEL_SHARE = 0.42;
const PAD_PT = 2;
// Below this a column is too narrow for two pairs side by side.
const PAIRED_FROM_PT = 300;

/** Layout of the pairs of a list: number per row, width, and the share of the label. */
interface Plan {
  abreast: number;
  pairPt: number;
  labelPt: number;
  padPt: number;
  tag: Tag | null;
}

// Labels of one list are as wide as the longest, so that the values align.
function labelWidthPt(facts: readonly Fact[], pairPt: number, setting: LayoutContext): number {
  const inside = { ...setting, text: labelText(setting) };
  const widest = (label: Markup): number => contentWidthsPt(wordsIn(label.children, inside)).maxPt;
  const longestPt = Math.max(0, ...facts.flatMap((fact) => fact.labels.map(widest)));
  return Math.min(longestPt + LABEL_GAP_PT * setting.scale, pairPt * MAX_LABEL_SHARE);
}

function planFor(block: Markup, facts: readonly Fact[], setting: LayoutContext): Plan {
  const paired = block.classes.has('facts') && !block.classes.has('wide');
  const abreast = paired && setting.columnPt > PAIRED_FROM_PT ? 2 : 1;
  const pairPt = (setting.columnPt - (abreast - 1) * GUTTER_PT) / abreast;
  const tag = childTag(setting.tag, 'L', { numbering: 'None' });
  return { abreast, pairPt, labelPt: labelWidthPt(facts, pairPt, setting), padPt: PAD_PT * setting.scale, tag };
}

function rowOf(facts: readonly Fact[], plan: Plan, setting: LayoutContext, flow: Flow): Strip[] {
  const { pairPt, labelPt, padPt, tag } = plan;
  const cells = facts.flatMap((fact, place): Cell[] => {
    const xPt = place * (pairPt + GUTTER_PT);
    const widths = [labelPt - LABEL_GAP_PT * setting.scale + 0.05, pairPt - labelPt] as const;
    const [labels, values] = factStrips(fact, tag, widths, setting, flow);
    return [
      { xPt, strips: labels },
      { xPt: xPt + labelPt, strips: values },
    ];
  });
  const slices = sideBySide(cells, setting.bodyPt - 2 * padPt);
  return slices.map((slice, i) => {
    const heightPt = slice.heightPt + 2 * padPt;
    const last = i === slices.length - 1;
    const rules = last
      ? facts.flatMap((_, place) => horizontalRule(place * (pairPt + GUTTER_PT), heightPt, pairPt, RULE_PT.hair))
      : [];
    const items: Item[] = [{ kind: 'group', xPt: 0, yPt: padPt, items: slice.items }, ...rules];
    return strip({ heightPt, items });
  });
}

/** `<dl>`: pairs of label and value over hairlines; class `facts` sets two pairs a row unless it is `wide`. */
export const factsBlock: BlockRule = (block, setting, flow) => {
  const facts = factsOf(block);
  const plan = planFor(block, facts, setting);
  const rows: Strip[] = [];
  for (let i = 0; i < facts.length; i += plan.abreast) {
    const row = rowOf(facts.slice(i, i + plan.abreast), plan, setting, flow);
    // No single row remains on either side of a page break.
    const alone = i > 0 && (i === plan.abreast || i + plan.abreast >= facts.length);
    rows.push(...row.map((each, n) => (n === 0 && alone ? { ...each, breakBefore: BREAK.orphan } : each)));
  }
  return spaced(rows, 3 * setting.scale, 9.75 * setting.scale);
};
