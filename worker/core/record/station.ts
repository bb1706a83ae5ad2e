import * as z from 'zod';
import { fieldText } from '../text/field-texts.ts';
import {
  arm,
  choice,
  count,
  density,
  distance,
  flag,
  flow,
  identifier,
  line,
  list,
  mass,
  part,
  reference,
  volume,
} from './field.ts';

type StationKind = 'load-station' | 'fuel-station' | 'water-station';

const common = (kind: StationKind) => ({
  id: identifier(['station', kind], 'common_id', 'left-seat'),
  name: line('common_name', 'Left seat', 40),
  isNonLifting: flag('common_isNonLifting', true).optional(),
});

const lateralArm = () => distance('common_lateralArm', -380).optional();

/** Kinds of load station: seats, places for baggage, removable ballast, and loads outside. */
const LOADS = ['pilot', 'passenger', 'baggage', 'locker', 'ballast', 'external'] as const;

/** A seat, a baggage compartment, or another place for a mass at one arm. */
export const LoadStation = part('loadStation', {
  ...common('load-station'),
  kind: choice('loadStation_kind', LOADS),
  arm: arm('loadStation_arm', 2180),
  lateralArm: lateralArm(),
  places: count('loadStation_places', 1, { min: 1, max: 6 }).optional(),
  minimumMass: mass('loadStation_minimumMass', 55).optional(),
  maximumMass: mass('loadStation_maximumMass', 110),
});

export const TankLevel = part('tankLevel', {
  volume: volume('tankLevel_volume', 40),
  arm: arm('tankLevel_arm', 2310),
  lateralArm: lateralArm(),
});

const tank = {
  arm: arm('fuelStation_arm', 2310).optional(),
  lateralArm: lateralArm(),
  armByVolume: list('fuelStation_armByVolume', TankLevel, {
    min: 2,
    max: 30,
  }).optional(),
  capacity: volume('fuelStation_capacity', 70, { min: 0.01 }),
  density: density('fuelStation_density', 0.72, { min: 0.01, max: 12 }),
};

/** A tank, with one arm or a table of arm against content. */
export const FuelStation = part('fuelStation', {
  ...common('fuel-station'),
  kind: choice('fuelStation_kind', ['fuel'] as const),
  ...tank,
  unusable: volume('fuelStation_unusable', 2),
  leastUsable: volume('fuelStation_leastUsable', 10).optional(),
  burnOrder: count('fuelStation_burnOrder', 1, {
    min: 1,
    max: 20,
  }).optional(),
});

export const MatchedLevel = part('matchedLevel', {
  mass: mass('matchedLevel_mass', 80),
  ballast: mass('matchedLevel_ballast', 2.9),
});

/** Tail ballast whose amount follows from the water in other tanks. */
export const MatchedBallast = part('matchedBallast', {
  to: list('matchedBallast_to', reference('water-station', 'matchedBallast_to_each', 'wing-water'), {
    min: 1,
    max: 8,
  }),
  table: list('matchedBallast_table', MatchedLevel, { min: 2, max: 30 }),
});

/** A tank for water ballast. */
export const WaterStation = part('waterStation', {
  ...common('water-station'),
  kind: choice('waterStation_kind', ['water'] as const),
  ...tank,
  isDumpable: flag('waterStation_isDumpable', true).optional(),
  dumpRate: flow('waterStation_dumpRate', 1800, { min: 0.1 }).optional(),
  matched: MatchedBallast.optional(),
});

export const Station = z
  .discriminatedUnion('kind', [LoadStation, FuelStation, WaterStation])
  .meta({ ...fieldText('station') });

/** Condition of a joint limit: it holds only while one of these stations carries more. */
export const LimitCondition = part('limitCondition', {
  stations: list('limitCondition_stations', reference('station', 'limitCondition_stations_each', 'rear-seat'), {
    min: 1,
    max: 40,
  }),
  above: mass('limitCondition_above', 0),
});

export const LoadingLimit = part('loadingLimit', {
  id: identifier(['loading-limit'], 'loadingLimit_id', 'two-seats'),
  text: line('loadingLimit_text', 'Both seats together: not above 172 kg'),
  stations: list('loadingLimit_stations', reference('station', 'loadingLimit_stations_each', 'left-seat'), {
    min: 1,
    max: 40,
  }),
  maximumMass: mass('loadingLimit_maximumMass', 172),
  when: LimitCondition.optional(),
});
export type LoadingLimit = z.infer<typeof LoadingLimit>;
