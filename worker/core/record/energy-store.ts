import * as m from '../text/generated/messages.ts';
import { count, identifier, line, number, part, pastDate, reference } from './field.ts';

const percent = { min: 0, max: 100 };

/** A traction battery as a store of energy: its mass stays, its energy goes. */
export const EnergyStore = part('energyStore', {
  id: identifier(['energy-store'], 'energyStore_id', 'pack-front'),
  name: line('energyStore_name', 'Front battery pack', 40),
  item: reference('equipment-item', 'energyStore_item', 'E12').optional(),
  serial: line('energyStore_serial', 'BP-0041', 60).optional(),
  nominalKwh: number('energyStore_nominalKwh', 'kWh', 11, { min: 0.01, max: 10_000 }),
  healthPercent: number('energyStore_healthPercent', '%', 93, percent).optional(),
  healthLimitPercent: number('energyStore_healthLimitPercent', '%', 2, percent).optional(),
  healthMeasuredOn: pastDate('energyStore_healthMeasuredOn', '2026-11-04', m.energyStore_capacityTest).optional(),
  leastHealthPercent: number('energyStore_leastHealthPercent', '%', 80, percent).optional(),
  leastChargePercent: number('energyStore_leastChargePercent', '%', 15, percent),
  coldFactor: number('energyStore_coldFactor', '1', 0.9, { min: 0.01, max: 1 }).optional(),
  cycles: count('energyStore_cycles', 212).optional(),
  maximumCycles: count('energyStore_maximumCycles', 700).optional(),
});

/** Power that the traction batteries give, and the time that must be left. */
export const EnergyUse = part('energyUse', {
  cruisePowerKw: number('energyUse_cruisePowerKw', 'kW', 18, { min: 0.01, max: 2000 }),
  reservePowerKw: number('energyUse_reservePowerKw', 'kW', 16, { min: 0.01, max: 2000 }).optional(),
  reserveMin: number('energyUse_reserveMin', 'min', 20, { min: 0, max: 600 }),
});
