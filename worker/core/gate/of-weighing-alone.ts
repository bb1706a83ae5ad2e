import type { RuleInput } from './rule.ts';

/** Whether the release covers only the weighing and makes no statement on airworthiness. */
export function isOfWeighingAlone({ visit, regime }: Pick<RuleInput, 'visit' | 'regime'>): boolean {
  const statement = regime.statements.find(({ id }) => id === visit.release?.statement);
  return statement?.covers === 'weighing';
}
