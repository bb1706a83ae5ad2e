import type { MassMoment } from '../mass/mass-moment.ts';

/** A station that takes any mass from zero to its maximum, at one arm. */
export interface Variable {
  station: string;
  maximumKg: number;
  armMm: number;
}

/** Limit on a weighted sum of the masses on some stations, counted from the start of the space; the weight is 1 for most. */
export interface Group {
  weights: ReadonlyMap<string, number>;
  maximumKg: number;
}

/**
 * One linear piece of all loads of an aircraft: a start and the masses that may be added. A tank with a table of arms
 * adds several pieces, one for each segment of its content; a limit with a condition adds two.
 */
export interface LoadSpace {
  start: MassMoment;
  /** Mass on each station at the start, in kg above the empty mass. */
  startLoad: Readonly<Record<string, number>>;
  variables: readonly Variable[];
  groups: readonly Group[];
  maximumMassKg: number;
  /** Whether every two groups are nested or disjoint, so that filling in the order of arms is exact. */
  isLaminar: boolean;
}

/** Whether all weights are 1, and every two groups are nested or disjoint: the condition under which filling in order is exact. */
export function areLaminar(groups: readonly ReadonlyMap<string, number>[]): boolean {
  return groups.every(
    (a, index) =>
      [...a.values()].every((weight) => weight === 1) &&
      groups.slice(index + 1).every((b) => {
        const shared = [...a.keys()].filter((station) => b.has(station)).length;
        return shared === 0 || shared === a.size || shared === b.size;
      }),
  );
}
