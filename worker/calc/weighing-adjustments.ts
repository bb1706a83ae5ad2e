import type { Aircraft, Weighing } from '../visit/visit.ts';
import { fuelContent, tanksOf, usableFuel } from './fuel.ts';
import { cgMm, type MassMoment, minus, NOTHING } from './mass-moment.ts';

/** A mass taken off or added to come from the weighed to the empty condition; signed. */
export interface Adjustment extends MassMoment {
  name: string;
  why: 'aboard' | 'missing' | 'fuel' | 'unusable-fuel';
  pointer: string;
  armMm: number;
  /** Limit of error of its mass, zero where none is stated. */
  massLimitKg: number;
}

type LooseItem = NonNullable<Weighing['itemsAboard']>[number];

/**
 * What stands between the weighed and the empty condition: items aboard come off, items missing go on, usable fuel comes
 * off, unusable fuel goes on where the tanks were dry.
 *
 * @source FAA-H-8083-1B ch. 3, from memory
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
    name: item.name,
    why,
    pointer,
    armMm: item.armMm,
    massKg,
    momentKgMm: massKg * item.armMm,
    massLimitKg: item.massLimitKg ?? 0,
  };
}

function fuelAdjustments(aircraft: Aircraft, weighing: Weighing, at: string): Adjustment[] {
  if (weighing.fuelState === 'dry') {
    return tanksOf(aircraft).flatMap((tank) =>
      fuelLine(`Unusable fuel, ${tank.name}`, 'unusable-fuel', fuelContent(tank, tank.unusableL), `${at}/fuelState`, 0),
    );
  }
  if (weighing.fuelState === 'full') {
    return tanksOf(aircraft).flatMap((tank) =>
      fuelLine(
        `Usable fuel, ${tank.name}`,
        'fuel',
        minus(NOTHING, usableFuel(tank, tank.capacityL)),
        `${at}/fuelState`,
        0,
      ),
    );
  }
  if (weighing.fuelState !== 'stated') return [];
  return (weighing.fuelAboard ?? []).flatMap(({ station, volumeL, volumeLimitL = 0 }, index) => {
    const tank = tanksOf(aircraft).find(({ id }) => id === station);
    if (!tank) return [];
    const change = minus(NOTHING, usableFuel(tank, volumeL));
    return fuelLine(
      `Fuel, ${tank.name}`,
      'fuel',
      change,
      `${at}/fuelAboard/${index}`,
      volumeLimitL * tank.densityKgPerL,
    );
  });
}

function fuelLine(
  name: string,
  why: Adjustment['why'],
  change: MassMoment,
  pointer: string,
  massLimitKg: number,
): Adjustment[] {
  if (change.massKg === 0) return [];
  return [{ name, why, pointer, armMm: cgMm(change), ...change, massLimitKg }];
}
