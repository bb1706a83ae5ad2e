import * as z from 'zod';
import { fieldText } from '../text/field-texts.ts';
import { arm, choice, count, density, identifier, line, list, mass, part, reference, volume } from './field.ts';

const common = (kind: 'load-station' | 'fuel-station') => ({
  id: identifier(['station', kind], 'common_id', 'left-seat'),
  name: line('common_name', 'Left seat', 40),
});

/** A seat or a baggage compartment: mass at one arm. */
export const LoadStation = part('loadStation', {
  ...common('load-station'),
  kind: choice('loadStation_kind', ['pilot', 'passenger', 'baggage'] as const),
  arm: arm('loadStation_arm', 2180),
  minimumMass: mass('loadStation_minimumMass', 55).optional(),
  maximumMass: mass('loadStation_maximumMass', 110),
});

export const TankLevel = part('tankLevel', {
  volume: volume('tankLevel_volume', 40),
  arm: arm('tankLevel_arm', 2310),
});

/** A tank, with one arm or a table of arm against content. */
export const FuelStation = part('fuelStation', {
  ...common('fuel-station'),
  kind: choice('fuelStation_kind', ['fuel'] as const),
  arm: arm('fuelStation_arm', 2310).optional(),
  armByVolume: list('fuelStation_armByVolume', TankLevel, {
    min: 2,
    max: 30,
  }).optional(),
  capacity: volume('fuelStation_capacity', 70, { min: 0.01 }),
  unusable: volume('fuelStation_unusable', 2),
  density: density('fuelStation_density', 0.72, { min: 0.01, max: 10 }),
  burnOrder: count('fuelStation_burnOrder', 1, {
    min: 1,
    max: 20,
  }).optional(),
});

export const Station = z.discriminatedUnion('kind', [LoadStation, FuelStation]).meta({ ...fieldText('station') });

export const LoadingLimit = part('loadingLimit', {
  id: identifier(['loading-limit'], 'loadingLimit_id', 'two-seats'),
  text: line('loadingLimit_text', 'Both seats together: not above 172 kg'),
  stations: list('loadingLimit_stations', reference('load-station', 'loadingLimit_stations_each', 'left-seat'), {
    min: 1,
    max: 40,
  }),
  maximumMass: mass('loadingLimit_maximumMass', 172),
});
export type LoadingLimit = z.infer<typeof LoadingLimit>;
