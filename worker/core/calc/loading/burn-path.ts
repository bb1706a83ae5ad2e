import type { FuelStation, LoadedAircraft, TankStation } from '../../record/visit.ts';
import type { Loading } from './boundary.ts';
import { bendsOf, tanksOf, unusableOf, usableFuel } from './fuel.ts';

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
        .map((tank) => ({ tank, usableKg: from.load[tank.id] ?? 0 }))
        .filter(({ usableKg }) => usableKg > 0);
      if (full.length === 0) continue;
      for (const left of sharesLeft(full)) path.push(burnt(from, full, left));
    }
    return path;
  };
}

/** Chords between two bends of the path: it is straight unless an arm moves with the content. */
const CURVED_CHORDS = 4;

/**
 * Returns the shares of the fuel left along the burn of a group of tanks, falling to 0: at every line of their tables,
 * and at some points between.
 */
function sharesLeft(tanks: readonly { tank: FuelStation; usableKg: number }[]): number[] {
  const curved = tanks.filter(({ tank }) => tank.armByVolume);
  if (curved.length === 0) return [0];
  const bends = curved.flatMap(({ tank, usableKg }) =>
    bendsOf(tank).map((contentL) => ((contentL - unusableOf(tank)) * tank.densityKgPerL) / usableKg),
  );
  const falling = [...new Set([1, ...bends.filter((share) => share > 0 && share < 1), 0])].sort((a, b) => b - a);
  return falling.slice(1).flatMap((to, index) =>
    Array.from({ length: CURVED_CHORDS }, (_, step) => {
      const from = falling[index] ?? 1;
      return from + ((to - from) * (step + 1)) / CURVED_CHORDS;
    }),
  );
}

function burnGroups(aircraft: LoadedAircraft): FuelStation[][] {
  const groups = new Map<number, FuelStation[]>();
  for (const tank of tanksOf(aircraft)) {
    const order = tank.burnOrder ?? 1;
    groups.set(order, [...(groups.get(order) ?? []), tank]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, tanks]) => tanks);
}

/** Returns a loading with a share of the usable fuel of some tanks left. */
function burnt(from: Loading, tanks: readonly { tank: FuelStation; usableKg: number }[], left: number): Loading {
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
