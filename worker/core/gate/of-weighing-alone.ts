import { isOnlyOf } from './regimes/regime.ts';
import type { RuleInput } from './rule.ts';
import { statedIn } from './stated.ts';

/** Whether the release covers only the weighing and makes no statement on airworthiness. */
export function isOfWeighingAlone({ visit, regime }: Pick<RuleInput, 'visit' | 'regime'>): boolean {
  const stated = statedIn(visit, regime);
  return stated.length > 0 && stated.every(({ statement }) => isOnlyOf(statement, 'weighing'));
}
