import { payloadAgainst } from '../../worker/core/calc/loading/payload.ts';
import { percentMac } from '../../worker/core/calc/mass/mac.ts';
import { combine, rectangular } from '../../worker/core/calc/weighing/uncertainty.ts';
import { addMonths } from '../../worker/core/units/calendar.ts';
import { factorOf, type Quantity, type Units } from '../../worker/core/units/quantity.ts';
import { ANTENNA_TOPICS } from './antenna-cases.ts';
import { BALANCE_TOPICS } from './balance-cases.ts';
import { CLOCK_TOPICS } from './clock-cases.ts';
import { COMPASS_TOPICS } from './compass-cases.ts';
import { ELECTRICAL_TOPICS } from './electrical-cases.ts';
import { equipmentChangeCase } from './equipment-change-case.ts';
import { fuelBurn } from './fuel-burn.ts';
import { GLIDER_TOPICS } from './glider-cases.ts';
import { LATERAL_TOPICS } from './lateral-cases.ts';
import { extremeCase, loadingCase, overMaximumCase } from './loading-case.ts';
import { negligibleCase } from './negligible-case.ts';
import { readVisit } from './read-visit.ts';
import { SURVEILLANCE_TOPICS } from './surveillance-cases.ts';
import { takeOffLimitsCase } from './take-off-limits-case.ts';
import { weighingCase } from './weighing-case.ts';

type Topic = (input: never) => Record<string, number>;

/** From the topic of a case to the function that computes it, in the units of the case. */
export const TOPICS: Readonly<Record<string, Topic>> = {
  weighing: weighingCase,
  'equipment-change': equipmentChangeCase,
  loading: loadingCase,
  extreme: extremeCase,
  'over-maximum': overMaximumCase,
  'take-off-limits': takeOffLimitsCase,
  burn: fuelBurn,
  negligible: negligibleCase,
  ...COMPASS_TOPICS,
  ...SURVEILLANCE_TOPICS,
  ...CLOCK_TOPICS,
  ...ELECTRICAL_TOPICS,
  ...ANTENNA_TOPICS,
  ...BALANCE_TOPICS,
  ...LATERAL_TOPICS,
  ...GLIDER_TOPICS,

  'percent-mac': ({ leadingEdge, length, arm }: { leadingEdge: number; length: number; arm: number }) => ({
    percent: percentMac({ leadingEdgeArmMm: leadingEdge, lengthMm: length }, arm) ?? Number.NaN,
  }),

  factor: ({ quantity, units }: { quantity: Quantity; units: Units }) => ({ factor: factorOf(quantity, units) }),

  convert: ({ quantity, units, value }: { quantity: Quantity; units: Units; value: number }) => ({
    value: value * factorOf(quantity, units),
  }),

  limit: ({ limit }: { limit: number }) => ({ standard: rectangular(limit) }),

  combine: ({ standards }: { standards: number[] }) => {
    const source = { source: 'case', quantity: 'mass', massSensitivity: 1, momentSensitivity: 0 } as const;
    const contributions = standards.map((standard) => ({ ...source, standard }));
    return { standard: combine(contributions, 1, 0).massKg };
  },

  'add-months': ({ date, months }: { date: string; months: number }) => {
    const [year = Number.NaN, month = Number.NaN, day = Number.NaN] = addMonths(date, months).split('-').map(Number);
    return { year, month, day };
  },

  payload: (input: PayloadInput) => {
    const visit = readVisit('computed-only');
    const stations = visit.aircraft.stations.map((station) =>
      station.kind === 'fuel' ? { ...station, densityKgPerL: input.densityKgPerL } : station,
    );
    const engine = { maker: 'M', model: 'M', serial: 'S', fuelFlowLPerH: input.fuelFlowLPerH };
    const aircraft = { ...visit.aircraft, stations, engine, seats: input.seats, maximumMassKg: input.maximumMassKg };
    const rule = { perSeatKg: input.perSeatKg, fuelHours: input.hours };
    return { spareKg: payloadAgainst({ ...visit, aircraft }, input.emptyMassKg, rule).sparePayloadKg };
  },
};

interface PayloadInput {
  maximumMassKg: number;
  emptyMassKg: number;
  seats: number;
  perSeatKg: number;
  fuelFlowLPerH: number;
  densityKgPerL: number;
  hours: number;
}
