import type { Wire, Wiring } from '../../record/visit.ts';
import type { Material } from '../../record/wire-size.ts';
import type { Conductor } from '../electrical/wire-table.ts';
import { areaMm2, gaugeNumber } from './wire-gauge.ts';
import type { Harness, HarnessMass } from './wiring-result.ts';

export type { Harness, HarnessMass } from './wiring-result.ts';

/** Densities in g/cm³, which is g per mm² and metre (handbook figures, from memory). */
const G_PER_CM3: Readonly<Record<Material, number>> = { copper: 8.96, aluminium: 2.7 };

/**
 * Allowances on a copper conductor of the size for insulation and for a screen: workshop figures without a source, to
 * be replaced by weighing.
 */
export const INSULATION_SHARE = 0.4;
export const SCREEN_SHARE = 0.8;

/**
 * Returns the estimated mass of a metre of wire in grams: conductor by the gauge formula, with allowances for
 * insulation and screen. These depend on the size and not on the metal: the insulation of an aluminium wire is not
 * lighter.
 *
 * @source densities of handbooks, from memory; allowances for insulation and screen: workshop figures, no source
 */
export function gramPerM({ gauge, material = 'copper' }: Conductor, isScreened: boolean): number {
  const area = areaMm2(gaugeNumber(gauge));
  const around = INSULATION_SHARE + (isScreened ? SCREEN_SHARE : 0);
  return area * (G_PER_CM3[material] + around * G_PER_CM3.copper);
}

interface Run {
  lengthM: number;
  massKg: number;
  armMm: number | undefined;
}

const wireRun = (wire: Wire): Run => ({
  lengthM: wire.lengthM,
  massKg: (wire.lengthM * (wire.gramPerM ?? gramPerM(wire, wire.shield !== 'none'))) / 1000,
  armMm: wire.armMm,
});

function totalOf(runs: readonly Run[]): Harness {
  const placed = runs.filter(({ armMm, massKg }) => armMm !== undefined && massKg > 0);
  const placedKg = placed.reduce((sum, { massKg }) => sum + massKg, 0);
  return {
    lengthM: runs.reduce((sum, { lengthM }) => sum + lengthM, 0),
    massKg: runs.reduce((sum, { massKg }) => sum + massKg, 0),
    armMm:
      placedKg > 1e-9 ? placed.reduce((sum, { massKg, armMm = 0 }) => sum + (massKg / placedKg) * armMm, 0) : undefined,
  };
}

/**
 * Returns the estimated masses of the wires added and removed, removed found wires included.
 *
 * @source common practice, no source
 */
export function harnessMass({ wires, found = [] }: Wiring): HarnessMass {
  const removedFound = found.flatMap(({ decision, gauge, material, lengthM, armMm }): Run[] =>
    decision === 'removed' && gauge !== undefined && lengthM !== undefined
      ? [{ lengthM, massKg: (lengthM * gramPerM({ gauge, material }, false)) / 1000, armMm }]
      : [],
  );
  const of = (change: Wire['change']): Run[] => wires.filter((wire) => wire.change === change).map(wireRun);
  return { added: totalOf(of('added')), removed: totalOf([...of('removed'), ...removedFound]) };
}
