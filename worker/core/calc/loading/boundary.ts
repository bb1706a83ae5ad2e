import { isAtMost } from '../numbers/limit-met.ts';
import type { Group, LoadSpace } from './load-space.ts';
import type { Loading } from './loading-result.ts';

export type { Loading } from './loading-result.ts';

export type Side = 'forward' | 'aft';

/**
 * Returns the forward or aft boundary of a load space: the loadings with the min. (forward) or max. (aft) moment at
 * each total mass, as corners of a line along which mass rises, up to the maximum mass.
 *
 * Filling stations in the order of their arms gives the exact boundary: the minimum moment at a given total mass is a
 * linear programme over a polymatroid (bounds, and nested or separate groups), which the greedy order solves.
 *
 * @returns an empty list if even the start is over the maximum mass
 * @source greedy filling over a polymatroid: J. Edmonds, 1970, from memory; checked against every corner by
 *   tests/core/calc/loading/extremes.test.ts
 */
export function boundary(space: LoadSpace, side: Side): Loading[] {
  const { start, startLoad, maximumMassKg } = space;
  if (!isAtMost(start.massKg, maximumMassKg)) return [];
  const direction = side === 'forward' ? 1 : -1;
  const inOrder = [...space.variables].sort((a, b) => direction * (a.armMm - b.armMm));
  const left = new Map<Group, number>(space.groups.map((group) => [group, group.maximumKg]));
  const corners: Loading[] = [{ ...start, load: startLoad }];
  let at: Loading = { ...start, load: startLoad };
  for (const { station, maximumKg, armMm } of inOrder) {
    const groups = space.groups.filter(({ stations }) => stations.has(station));
    const room = Math.min(maximumKg, maximumMassKg - at.massKg, ...groups.map((group) => left.get(group) ?? 0));
    if (!(room > 0)) continue;
    for (const group of groups) left.set(group, (left.get(group) ?? 0) - room);
    at = {
      massKg: at.massKg + room,
      momentKgMm: at.momentKgMm + room * armMm,
      load: { ...at.load, [station]: (at.load[station] ?? 0) + room },
    };
    corners.push(at);
  }
  return corners;
}

/** Whether every two groups are nested or disjoint: the condition under which `boundary` is exact. */
export function areLaminar(groups: readonly ReadonlySet<string>[]): boolean {
  return groups.every((a, index) =>
    groups.slice(index + 1).every((b) => {
      const shared = [...a].filter((station) => b.has(station)).length;
      return shared === 0 || shared === a.size || shared === b.size;
    }),
  );
}

/**
 * Returns the loading a share of the way from one to another.
 *
 * @param share 0 to 1
 */
export function between(from: Loading, to: Loading, share: number): Loading {
  if (share === 1) return to;
  if (share === 0) return from;
  const load: Record<string, number> = {};
  for (const station of new Set([...Object.keys(from.load), ...Object.keys(to.load)])) {
    const begin = from.load[station] ?? 0;
    load[station] = begin + ((to.load[station] ?? 0) - begin) * share;
  }
  return {
    massKg: from.massKg + (to.massKg - from.massKg) * share,
    momentKgMm: from.momentKgMm + (to.momentKgMm - from.momentKgMm) * share,
    load,
  };
}
