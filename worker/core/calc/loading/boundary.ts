import { isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './loading-result.ts';
import { cheapestLine } from './parametric.ts';
import type { Group, LoadSpace } from './space.ts';

export type { Loading } from './loading-result.ts';

export type Side = 'forward' | 'aft';

/**
 * Returns the forward or aft boundary of a load space: the loadings with the min. (forward) or max. (aft) moment at
 * each total mass, as corners of a line along which mass rises, up to the maximum mass.
 *
 * With limits that are nested or disjoint, filling stations in the order of their arms is exact: the minimum moment at
 * a given total mass is a linear programme over a polymatroid, which the greedy order solves. With limits that cross,
 * the linear programme itself is solved.
 *
 * @returns an empty list if even the start is over the maximum mass, or if no load meets every limit
 * @source greedy filling over a polymatroid: J. Edmonds, 1970, from memory; checked against every corner by
 *   tests/core/calc/loading/extremes.test.ts
 */
export function boundary(space: LoadSpace, side: Side): Loading[] {
  if (!isAtMost(space.start.massKg, space.maximumMassKg)) return [];
  const direction = side === 'forward' ? 1 : -1;
  return space.isLaminar ? filledInOrder(space, direction) : solved(space, direction);
}

function filledInOrder(
  { start, startLoad, variables, groups, maximumMassKg }: LoadSpace,
  direction: 1 | -1,
): Loading[] {
  const inOrder = [...variables].sort((a, b) => direction * (a.armMm - b.armMm));
  const left = new Map<Group, number>(groups.map((group) => [group, group.maximumKg]));
  const corners: Loading[] = [{ ...start, load: startLoad }];
  let at: Loading = { ...start, load: startLoad };
  for (const { station, maximumKg, armMm } of inOrder) {
    const joined = groups.filter(({ weights }) => weights.has(station));
    const room = Math.min(maximumKg, maximumMassKg - at.massKg, ...joined.map((group) => left.get(group) ?? 0));
    if (!(room > 0)) continue;
    for (const group of joined) left.set(group, (left.get(group) ?? 0) - room);
    at = {
      massKg: at.massKg + room,
      momentKgMm: at.momentKgMm + room * armMm,
      load: { ...at.load, [station]: (at.load[station] ?? 0) + room },
    };
    corners.push(at);
  }
  return corners;
}

function solved({ start, startLoad, variables, groups, maximumMassKg }: LoadSpace, direction: 1 | -1): Loading[] {
  const row = (weights: (station: string) => number, bound: number) => ({
    coefficients: variables.map(({ station }) => weights(station)),
    // A limit that the start meets exactly may be exceeded by binary rounding.
    bound: isAtMost(-bound, 0) ? Math.max(0, bound) : bound,
  });
  const line = cheapestLine({
    upper: variables.map(({ maximumKg }) => maximumKg),
    costs: variables.map(({ armMm }) => direction * armMm),
    rows: [
      row(() => 1, maximumMassKg - start.massKg),
      ...groups.map(({ weights, maximumKg }) => row((station) => weights.get(station) ?? 0, maximumKg)),
    ],
  });
  return line.map((masses): Loading => {
    const load: Record<string, number> = { ...startLoad };
    let { massKg, momentKgMm } = start;
    for (const [index, { station, armMm }] of variables.entries()) {
      const addedKg = masses[index] ?? 0;
      if (addedKg === 0) continue;
      massKg += addedKg;
      momentKgMm += addedKg * armMm;
      load[station] = (load[station] ?? 0) + addedKg;
    }
    return { massKg, momentKgMm, load };
  });
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
