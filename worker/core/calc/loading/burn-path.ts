import type { FuelStation, LoadedAircraft } from '../../record/visit.ts';
import type { Loading } from './boundary.ts';
import { tanksOf, usableFuel } from './fuel.ts';

/** Points computed along the burn of a group of tanks: the path is straight unless an arm moves with the content. */
const STEPS = { straight: 1, curved: 4 } as const;

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
      const steps = full.some(({ tank }) => tank.armByVolume) ? STEPS.curved : STEPS.straight;
      for (let step = 1; step <= steps; step++) path.push(burnt(from, full, 1 - step / steps));
    }
    return path;
  };
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
export function usableFuelOf(tank: FuelStation, usableKg: number): { massKg: number; momentKgMm: number } {
  return usableFuel(tank, tank.unusableL + usableKg / tank.densityKgPerL);
}
