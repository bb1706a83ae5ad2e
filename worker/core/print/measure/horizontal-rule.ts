import { HAIR_GREY, RULE_PT } from '../style/block-style.ts';
import type { Item } from './item.ts';

/** Returns a rule from a point to the right; empty without weight. Hairlines are grey. */
export function horizontalRule(xPt: number, yPt: number, widthPt: number, weightPt: number): Item[] {
  if (weightPt === 0) return [];
  const grey = weightPt <= RULE_PT.hair ? HAIR_GREY : 0;
  return [{ kind: 'rule', fromPt: [xPt, yPt], toPt: [xPt + widthPt, yPt], weightPt, grey }];
}
