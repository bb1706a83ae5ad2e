import type { LateralResult } from '../calc/lateral/lateral-result.ts';
import type { LoadingSheet } from '../calc/loading/loading-sheet.ts';
import type { PlacedMass } from '../calc/mass/mass-result.ts';
import type { Aircraft } from '../record/visit.ts';
import type { RuleInput } from './rule.ts';

/** A configuration with its empty condition and its loadings: the one of the visit, or another. */
export interface Sheet {
  /** Way to the limits in the record. */
  path: readonly (string | number)[];
  /** Name of the configuration; undefined if the aircraft has only one. */
  name: string | undefined;
  aircraft: Aircraft;
  empty: PlacedMass;
  loading: LoadingSheet;
  lateral: LateralResult | undefined;
}

/** Returns every configuration of the aircraft whose empty condition is known. */
export function sheetsOf({ visit, results }: Pick<RuleInput, 'visit' | 'results'>): Sheet[] {
  const { aircraft } = visit;
  const { schedule, loading, lateral } = results;
  const worked: Sheet[] =
    schedule && loading
      ? [{ path: ['aircraft'], name: aircraft.configuration?.name, aircraft, empty: schedule, loading, lateral }]
      : [];
  const others = results.configurations.map((each): Sheet => {
    const index = (aircraft.configurations ?? []).findIndex(({ id }) => id === each.empty.id);
    return { ...each, path: ['aircraft', 'configurations', index], name: each.empty.name };
  });
  return [...worked, ...others];
}
