import type { Aircraft } from '../../record/visit.ts';
import { COVERAGE_FACTOR } from '../weighing/uncertainty.ts';
import type { EnergyResult, StoreResult } from './energy-result.ts';
import { energyEndurance, usableEnergy } from './energy-store.ts';

export type { EnergyResult } from './energy-result.ts';

type Store = NonNullable<Aircraft['energyStores']>[number];

/**
 * Returns the usable energy of the traction batteries, from full to the least charge, and the endurance above the
 * reserve; undefined without any.
 *
 * @source common practice, no source; the sums are in `usableEnergy` and `energyEndurance`
 */
export function energyResults({ energyStores = [], energyUse }: Aircraft): EnergyResult | undefined {
  if (energyStores.length === 0) return undefined;
  const stores = energyStores.map(storeResult);
  const usableKwh = stores.reduce((sum, each) => sum + each.usableKwh, 0);
  const standardKwh = Math.hypot(...stores.map((each) => each.standardKwh));
  return {
    stores,
    usableKwh,
    standardKwh,
    endurance:
      energyUse &&
      energyEndurance(
        { kwh: usableKwh, standardKwh },
        {
          powerKw: energyUse.cruisePowerKw,
          reserveKw: energyUse.reservePowerKw ?? energyUse.cruisePowerKw,
          reserveMin: energyUse.reserveMin,
        },
      ),
  };
}

function storeResult(store: Store): StoreResult {
  const { id, name, nominalKwh, healthPercent = 100, healthLimitPercent = 0, leastChargePercent, coldFactor } = store;
  const { kwh, standardKwh } = usableEnergy(
    {
      nominalKwh,
      health: healthPercent / 100,
      chargeAtStart: 1,
      chargeKept: leastChargePercent / 100,
      ...(coldFactor !== undefined && { temperatureFactor: coldFactor }),
    },
    // A limit of error of the health is taken as k = 2: our choice.
    { health: healthLimitPercent / 100 / COVERAGE_FACTOR },
  );
  const { cycles, maximumCycles } = store;
  const cyclesLeft = cycles === undefined || maximumCycles === undefined ? undefined : maximumCycles - cycles;
  return { id, name, usableKwh: kwh, standardKwh, cyclesLeft };
}
