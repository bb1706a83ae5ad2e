import type { RuleInput } from './rule.ts';

/** Whether the release covers only the weighing and makes no statement on airworthiness. */
export function isOfWeighingAlone({ visit, regime }: Pick<RuleInput, 'visit' | 'regime'>): boolean {
  const stated = visit.release ? [visit.release, ...(visit.release.further ?? [])] : [];
  const covers = stated.map(({ statement }) => regime.statements.find(({ id }) => id === statement)?.covers);
  return covers.length > 0 && covers.every((of) => of === 'weighing');
}
