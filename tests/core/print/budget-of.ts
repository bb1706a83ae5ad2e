import { type Bounds, Budget, type Work } from '../../../worker/core/print/bytes/budget.ts';

const UNBOUNDED: Bounds = {
  unpackedBytes: 1e9,
  passedBytes: 1e9,
  objects: 1e9,
  tokens: 1e9,
  draws: 1e15,
  pixels: 1e15,
};

/** A budget that is bounded only where a bound is given. */
export function budgetOf(bounds: Partial<Record<Work, number>>): Budget {
  return new Budget({ ...UNBOUNDED, ...bounds });
}
