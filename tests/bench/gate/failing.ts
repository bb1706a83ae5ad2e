import type { Results } from '../../../worker/core/calc/results.ts';

/** How much of the results fails, and how much that is owed is not recorded. */
export interface Failing {
  failed: number;
  missing: number;
}

/** Counts results that say of themselves that they are outside their limits, overdue, or not recorded. */
export function failingIn(results: Results): Failing {
  // A loading outside the envelope is the pilot's to avoid, and no contradiction.
  const { loading, lateral, configurations, clock, readings, open, ...told } = results;
  const failing = { failed: 0, missing: 0 };
  count(told, failing);
  failing.failed += (results.electrical?.circuits ?? []).filter(isOverloaded).length;
  const endurance = results.electrical?.endurance;
  if (endurance?.minutes !== undefined && endurance.minutes < endurance.neededMin) failing.failed += 1;
  return failing;
}

type Circuit = NonNullable<Results['electrical']>['circuits'][number];

const isOverloaded = ({ continuousA, ampacity, continuousDrop }: Circuit): boolean =>
  (ampacity !== undefined && continuousA > ampacity.currentA) ||
  (continuousDrop !== undefined && continuousDrop.dropV > continuousDrop.limitV);

/** Difference of weighing and prediction about which nobody asks, however well both are known. */
const SMALL = { kg: 1, mm: 5 };

export function isLarge(comparison: object): boolean {
  const { differenceKg = 0, differenceMm = 0 } = comparison as { differenceKg?: number; differenceMm?: number };
  return Math.abs(differenceKg) > SMALL.kg || Math.abs(differenceMm) > SMALL.mm;
}

function count(value: unknown, failing: Failing): void {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === 'isWithin' && inner === false) failing.failed += 1;
    else if (key === 'isOverdue' && inner === true) failing.failed += 1;
    else if (key === 'isSignificant' && inner === true) failing.failed += Number(isLarge(value));
    else if (key === 'outcome' && inner === 'failed') failing.failed += 1;
    else if (key === 'outcome' && inner === 'not recorded') failing.missing += 1;
    else if (key === 'omissions' || key === 'transponderMissing')
      failing.missing += Array.isArray(inner) ? inner.length : 0;
    else count(inner, failing);
  }
}
