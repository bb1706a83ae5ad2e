import type { FuelStation, LoadedAircraft, TankStation } from '../../record/visit.ts';
import { ACROSS, turned } from '../lateral/across.ts';
import type { Loading } from './boundary.ts';
import { bendsOf, fuelArmMm, tanksOf, unusableOf, usableFuel } from './fuel.ts';

/**
 * Returns the burn path of an aircraft: the loadings through which the fuel burns down to unusable, tanks in their burn
 * order, tanks with the same number together in proportion to their content.
 *
 * @source common practice, no source
 */
export function burnPathOf(aircraft: LoadedAircraft): (start: Loading) => Loading[] {
  const groups = burnGroups(aircraft);
  return (start) => {
    const path: Loading[] = [start];
    for (const group of groups) {
      const from = path.at(-1) ?? start;
      const full = group
        .map((tanks) => ({ ...tanks, usableKg: from.load[tanks.tank.id] ?? 0 }))
        .filter(({ usableKg }) => usableKg > 0);
      if (full.length === 0) continue;
      const lightestKg = full.reduce((left, { usableKg }) => left - usableKg, from.massKg);
      for (const left of sharesLeft(full, lightestKg)) path.push(burnt(from, full, left));
    }
    return path;
  };
}

/**
 * Chords between two bends of the path, where an arm moves with the content: a few in any case, so that charts look round,
 * and a limited number, because a mistyped table must not take long.
 */
const CHORDS = { fewest: 4, most: 64 } as const;

/** Error of a centre of gravity along the path that is left to its chords. */
const CLOSE_MM = 0.02;

/** A tank, and the same tank over its lateral arms. */
interface Tank {
  tank: FuelStation;
  across: FuelStation;
}

type Filled = Tank & { usableKg: number };

/**
 * Returns the shares of the fuel left along the burn of a group of tanks, falling to 0: at every line of their tables,
 * and between at as many points as the error needs. A chord over ΔV misses moments of a tank by ρ·|b|·ΔV²/4, where b is
 * the change of its arm with the volume.
 */
function sharesLeft(tanks: readonly Filled[], lightestKg: number): number[] {
  const curved = tanks.filter(({ tank }) => tank.armByVolume);
  if (curved.length === 0) return [0];
  const bends = curved.flatMap(({ tank, usableKg }) =>
    bendsOf(tank).map((contentL) => ((contentL - unusableOf(tank)) * tank.densityKgPerL) / usableKg),
  );
  const falling = [...new Set([1, ...bends.filter((share) => share > 0 && share < 1), 0])].sort((a, b) => b - a);
  return falling.slice(1).flatMap((to, index) => {
    const from = falling[index] ?? 1;
    const missedKgMm = curved.reduce((sum, filled) => sum + missedBy(filled, from, to), 0);
    const needed = Math.ceil(Math.sqrt(missedKgMm / (CLOSE_MM * Math.max(lightestKg, 1))));
    const chords = Math.min(Math.max(CHORDS.fewest, needed), CHORDS.most);
    return Array.from({ length: chords }, (_, step) => from + ((to - from) * (step + 1)) / chords);
  });
}

/** How far one chord between two shares of the fuel misses the moments of a tank, along or across, in kg·mm. */
function missedBy({ tank, across, usableKg }: Filled, from: number, to: number): number {
  const contentAt = (share: number): number => unusableOf(tank) + (usableKg * share) / tank.densityKgPerL;
  const [fullL, leftL] = [contentAt(from), contentAt(to)];
  const movedMm = Math.max(...[tank, across].map((of) => Math.abs(fuelArmMm(of, fullL) - fuelArmMm(of, leftL))));
  return (tank.densityKgPerL * movedMm * (fullL - leftL)) / 4;
}

function burnGroups(aircraft: LoadedAircraft): Tank[][] {
  const groups = new Map<number, Tank[]>();
  const turnedTanks = tanksOf(turned(aircraft, ACROSS));
  for (const [index, tank] of tanksOf(aircraft).entries()) {
    const order = tank.burnOrder ?? 1;
    groups.set(order, [...(groups.get(order) ?? []), { tank, across: turnedTanks[index] ?? tank }]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, tanks]) => tanks);
}

/** Returns a loading with a share of the usable fuel of some tanks left. */
function burnt(from: Loading, tanks: readonly Filled[], left: number): Loading {
  const load = { ...from.load };
  let { massKg, momentKgMm } = from;
  for (const { tank, usableKg } of tanks) {
    const before = usableFuelOf(tank, usableKg);
    const after = usableFuelOf(tank, usableKg * left);
    load[tank.id] = usableKg * left;
    massKg += after.massKg - before.massKg;
    momentKgMm += after.momentKgMm - before.momentKgMm;
  }
  return { massKg, momentKgMm, load };
}

/**
 * Returns mass and moment of a usable mass of fuel in a tank.
 *
 * @source definition of density
 */
export function usableFuelOf(tank: TankStation, usableKg: number): { massKg: number; momentKgMm: number } {
  return usableFuel(tank, unusableOf(tank) + usableKg / tank.densityKgPerL);
}
