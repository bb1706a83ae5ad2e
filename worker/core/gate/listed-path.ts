import type { Results } from '../calc/results.ts';
import type { Visit } from '../record/visit.ts';
import { fittedItems } from './fitted-items.ts';

/** Path in the record of an item aboard: where it was fitted, found or listed. */
export function listedPath(
  visit: Pick<Visit, 'baseline' | 'asFound'>,
  results: Pick<Results, 'change'>,
  id: string,
): readonly (string | number)[] {
  const fitted = fittedItems(results).findLast(({ item }) => item.id === id);
  if (fitted) return fitted.path;
  const found = visit.asFound?.findIndex((line) => line.kind === 'unlisted' && line.id === id) ?? -1;
  if (found >= 0) return ['asFound', found];
  const index = visit.baseline?.equipment?.findIndex((item) => item.id === id) ?? 0;
  return ['baseline', 'equipment', Math.max(0, index)];
}
