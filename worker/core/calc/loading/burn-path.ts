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
 * and a limited number, because a mistyped table must not take long. Both are our choice.
 */
const CHORDS = { fewest: 4, most: 64 } as const;

/** Error of a centre of gravity along the path that is left to its chords. */
const CLOSE_MM = 0.02;

/** Contents of a tank from the bend before, and how far the arm moves there for each litre, along or across, in mm. */
interface Piece {
  toL: number;
  perL: number;
}

interface Tank {
  tank: FuelStation;
  /** Empty if the arm does not move. */
  pieces: readonly Piece[];
}

type Filled = Tank & { usableKg: number };

/**
 * Returns the shares of the fuel left along the burn of a group of tanks, falling to 0: at every line of their tables,
 * and between at as many points as the error needs. A chord over ΔV misses moments of a tank by ρ·|b|·ΔV²/4, where b is
 * the change of its arm with the volume.
 */
function sharesLeft(tanks: readonly Filled[], lightestKg: number): number[] {
  const curved = tanks.filter(({ pieces }) => pieces.length > 0);
  if (curved.length === 0) return [0];
  const bends = curved.flatMap(({ tank, pieces, usableKg }) =>
    pieces.map(({ toL }) => ((toL - unusableOf(tank)) * tank.densityKgPerL) / usableKg),
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
function missedBy({ tank, pieces, usableKg }: Filled, from: number, to: number): number {
  const fullL = usableKg / tank.densityKgPerL;
  const middleL = unusableOf(tank) + (fullL * (from + to)) / 2;
  const perL = pieces.find(({ toL }) => middleL <= toL)?.perL ?? 0;
  return (tank.densityKgPerL * perL * (fullL * (from - to)) ** 2) / 4;
}

function burnGroups(aircraft: LoadedAircraft): Tank[][] {
  const groups = new Map<number, Tank[]>();
  const turnedTanks = tanksOf(turned(aircraft, ACROSS));
  for (const [index, tank] of tanksOf(aircraft).entries()) {
    const order = tank.burnOrder ?? 1;
    groups.set(order, [...(groups.get(order) ?? []), { tank, pieces: piecesOf(tank, turnedTanks[index] ?? tank) }]);
  }
  return [...groups].sort(([a], [b]) => a - b).map(([, tanks]) => tanks);
}

/** @param across the same tank with its lateral arms in place of the others */
function piecesOf(tank: FuelStation, across: FuelStation): Piece[] {
  const bends = tank.armByVolume ? bendsOf(tank) : [];
  return bends.slice(1).map((toL, index): Piece => {
    const fromL = bends[index] ?? toL;
    const movedMm = [tank, across].map((of) => Math.abs(fuelArmMm(of, toL) - fuelArmMm(of, fromL)));
    return { toL, perL: toL > fromL ? Math.max(...movedMm) / (toL - fromL) : 0 };
  });
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
