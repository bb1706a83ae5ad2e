import type { MassMoment } from '../mass/mass-moment.ts';
import { isAtLeast } from '../numbers/limit-met.ts';

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
 * One set of loads of an aircraft, linear in mass and moment: a start and the masses that may be added. A limit with a
 * condition adds a second set. Tanks with a table of arms are followed by chords, and a set can be halved until they fit.
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
  /** How far moments of loads may lie below those of the chords, and above them, in kg·mm. */
  belowKgMm: number;
  aboveKgMm: number;
  /** Returns the two halves of the set, split at the worst chord. */
  halves: () => LoadSpace[];
}

/** Whether more on some station leaves more room for others, as water in the wings does for ballast in the tail. */
export function isRelaxable({ weights }: Group): boolean {
  for (const weight of weights.values()) if (weight < 0) return true;
  return false;
}

/**
 * Returns the space with only those limits that can bind what is still to be added, and over those stations alone: limits
 * that cross elsewhere do not matter.
 *
 * @param movable stations whose mass is not fixed yet
 */
export function withoutIdleLimits(space: LoadSpace, movable: ReadonlySet<string>): LoadSpace {
  const groups = space.groups
    .map(
      ({ weights, maximumKg }): Group => ({
        weights: new Map([...weights].filter(([station]) => movable.has(station))),
        maximumKg,
      }),
    )
    .filter(({ weights, maximumKg }) => !(maximumKg >= 0) || [...weights.values()].some((weight) => weight > 0));
  return { ...space, groups, isLaminar: areLaminar(groups.map(({ weights }) => weights)) };
}

/**
 * Returns the space with only those limits that full stations would exceed: met at the start, or still to be met by what
 * relaxes them. Undefined if a limit cannot be met.
 */
export function closed(space: LoadSpace): LoadSpace | undefined {
  const groups: Group[] = [];
  for (const group of space.groups) {
    const isMet = isAtLeast(group.maximumKg, 0);
    if (!isMet && !isRelaxable(group)) return undefined;
    const mostKg = space.variables.reduce(
      (sum, { station, maximumKg }) => sum + Math.max(0, group.weights.get(station) ?? 0) * maximumKg,
      0,
    );
    if (mostKg > group.maximumKg) groups.push(isMet ? { ...group, maximumKg: Math.max(0, group.maximumKg) } : group);
  }
  return { ...space, groups, isLaminar: space.isLaminar || areLaminar(groups.map(({ weights }) => weights)) };
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
