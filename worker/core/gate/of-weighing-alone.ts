import type { RuleInput } from './rule.ts';

/** Whether the release covers the weighing and nothing else: it says nothing of airworthiness. */
export function isOfWeighingAlone({ visit, regime }: Pick<RuleInput, 'visit' | 'regime'>): boolean {
  const statement = regime.statements.find(({ id }) => id === visit.release?.statement);
  return statement?.covers === 'weighing';
}
