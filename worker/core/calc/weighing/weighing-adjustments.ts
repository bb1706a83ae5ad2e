import type { Aircraft, FuelStation, Weighing } from '../../record/visit.ts';
import { fuelArmMm, fuelErrorArmMm, tankContent, tanksOf, usableFuel } from '../loading/fuel.ts';
import { cgMm, type MassMoment, minus, NOTHING } from '../mass/mass-moment.ts';
import type { Adjustment } from './weighing-result.ts';

export type { Adjustment } from './weighing-result.ts';

type LooseItem = NonNullable<Weighing['itemsAboard']>[number];

/**
 * Returns the adjustments from the weighed to the empty condition: items aboard and usable fuel are subtracted, missing
 * items are added, and unusable fuel if the tanks were dry.
 *
 * @source AC 43.13-1B 10-2r (tare) and 10-15 (fluids), read
 */
export function weighingAdjustments(aircraft: Aircraft, weighing: Weighing, at: string): Adjustment[] {
  const { itemsAboard = [], itemsMissing = [] } = weighing;
  return [
    ...itemsAboard.map((item, index) => looseItem(item, 'aboard', `${at}/itemsAboard/${index}`)),
    ...itemsMissing.map((item, index) => looseItem(item, 'missing', `${at}/itemsMissing/${index}`)),
    ...fuelAdjustments(aircraft, weighing, at),
  ];
}

function looseItem(item: LooseItem, why: 'aboard' | 'missing', pointer: string): Adjustment {
  const massKg = why === 'aboard' ? -item.massKg : item.massKg;
  return {
    line: { kind: why === 'aboard' ? 'item-aboard' : 'item-missing', item: item.name },
    why,
    pointer,
    armMm: item.armMm,
    massKg,
    momentKgMm: massKg * item.armMm,
    errorArmMm: item.armMm,
    massLimitKg: item.massLimitKg ?? 0,
  };
}

function fuelAdjustments(aircraft: Aircraft, weighing: Weighing, at: string): Adjustment[] {
  if (weighing.fuelState === 'dry') {
    return tanksOf(aircraft).flatMap((tank) => {
      const change = tankContent(tank, tank.unusableL);
      return fuelLine(
        {
          line: { kind: 'unusable-fuel', tank: tank.name },
          why: 'unusable-fuel',
          pointer: `${at}/fuelState`,
          massLimitKg: 0,
        },
        change,
        tank.unusableL,
        tank,
      );
    });
  }
  if (weighing.fuelState === 'full') {
    return tanksOf(aircraft).flatMap((tank) => {
      const change = minus(NOTHING, usableFuel(tank, tank.capacityL));
      return fuelLine(
        { line: { kind: 'usable-fuel', tank: tank.name }, why: 'fuel', pointer: `${at}/fuelState`, massLimitKg: 0 },
        change,
        tank.capacityL,
        tank,
      );
    });
  }
  if (weighing.fuelState !== 'stated') return [];
  return (weighing.fuelAboard ?? []).flatMap(({ station, volumeL, volumeLimitL = 0 }, index) => {
    const tank = tanksOf(aircraft).find(({ id }) => id === station);
    if (!tank) return [];
    const change = minus(NOTHING, usableFuel(tank, volumeL));
    const massLimitKg = volumeLimitL * tank.densityKgPerL;
    const place = `${at}/fuelAboard/${index}`;
    const line = { kind: 'stated-fuel', tank: tank.name } as const;
    return fuelLine({ line, why: 'fuel', pointer: place, massLimitKg }, change, volumeL, tank);
  });
}

/**
 * Omitted only without both fuel and uncertainty: a content stated as exactly the unusable subtracts no mass, but has
 * the same limit of error as any other. Its arm is then that of the tank at that content.
 */
function fuelLine(
  line: Pick<Adjustment, 'line' | 'why' | 'pointer' | 'massLimitKg'>,
  change: MassMoment,
  contentL: number,
  tank: FuelStation,
): Adjustment[] {
  if (change.massKg === 0 && line.massLimitKg === 0) return [];
  const armMm = change.massKg === 0 ? fuelArmMm(tank, contentL) : cgMm(change);
  return [{ ...line, ...change, armMm, errorArmMm: fuelErrorArmMm(tank, contentL) }];
}
