import type { Aircraft, FuelStation, Visit, Weighing } from '../../../record/visit.ts';
import { fuelArmMm, tankContent, tanksOf } from '../../loading/fuel.ts';
import { cgMm, minus } from '../../mass/mass-moment.ts';
import { hasOil } from '../oil.ts';
import { type Mismatch, massCause } from './candidate.ts';
import type { Cause } from './causes-result.ts';

/** Largest filling of oil of a light aircraft, in kg. */
const MOST_OIL_KG = 12;
/** The arm of the fuel follows from its content, which follows from the arm. */
const ROUNDS = 4;

/** Returns the tanks that may have held more or less fuel than the record states. */
export function fuelCauses(mismatch: Mismatch, aircraft: Aircraft, weighing: Weighing): Cause[] {
  return tanksOf(aircraft).flatMap((tank) => {
    const statedL = statedContentL(tank, weighing);
    return statedL === undefined ? [] : fuelCause(mismatch, tank, statedL);
  });
}

function statedContentL({ id, unusableL, capacityL }: FuelStation, weighing: Weighing): number | undefined {
  if (weighing.fuelState === 'drained-to-unusable') return unusableL;
  if (weighing.fuelState === 'dry') return 0;
  if (weighing.fuelState === 'full') return capacityL;
  return weighing.fuelAboard?.find(({ station }) => station === id)?.volumeL;
}

function fuelCause(mismatch: Mismatch, tank: FuelStation, statedL: number): Cause[] {
  const density = tank.densityKgPerL;
  const bounds = [-statedL * density, (tank.capacityL - statedL) * density] as const;
  let armMm = fuelArmMm(tank, statedL);
  let causes: Cause[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    causes = massCause(mismatch, armMm, bounds, { kind: 'fuel-more', of: tank.name });
    const massKg = causes[0]?.massKg;
    if (massKg === undefined) return [];
    const content = Math.min(tank.capacityL, Math.max(0, statedL + massKg / density));
    if (content !== statedL) armMm = cgMm(minus(tankContent(tank, content), tankContent(tank, statedL)));
  }
  return causes.map((cause) => ({
    ...cause,
    kind: (cause.massKg ?? 0) < 0 ? 'fuel-less' : 'fuel-more',
    volumeL: (cause.massKg ?? 0) / density,
    limitL: (cause.limitKg ?? 0) / density,
  }));
}

/** Returns oil that was out though stated as full, or in though stated as drained. */
export function oilCauses(
  mismatch: Mismatch,
  visit: Pick<Visit, 'aircraft' | 'baseline'>,
  weighing: Weighing,
): Cause[] {
  const armMm = weighing.oilArmMm ?? engineArmMm(visit);
  if (!hasOil(visit.aircraft) || armMm === undefined) return [];
  if (weighing.oilState === 'full') return massCause(mismatch, armMm, [-MOST_OIL_KG, 0], { kind: 'oil-out' });
  if (weighing.oilState === 'drained') return massCause(mismatch, armMm, [0, MOST_OIL_KG], { kind: 'oil-in' });
  return [];
}

/** Returns the arm of the engine from the equipment list, by its serial number. */
function engineArmMm({ aircraft, baseline }: Pick<Visit, 'aircraft' | 'baseline'>): number | undefined {
  const serial = aircraft.engine?.serial;
  return baseline?.equipment?.find((item) => serial !== undefined && item.serial === serial)?.armMm;
}
