import type { Aircraft } from '../record/visit.ts';

type LoadingLimit = NonNullable<Aircraft['loadingLimits']>[number];

/** A loading limit, and its path in the record. */
export interface StatedLimit {
  limit: LoadingLimit;
  path: readonly (string | number)[];
}

/** Returns the loading limits of the aircraft. */
export function limitsOf({ loadingLimits = [] }: Pick<Aircraft, 'loadingLimits'>): StatedLimit[] {
  return loadingLimits.map((limit, index) => ({ limit, path: ['aircraft', 'loadingLimits', index] }));
}
