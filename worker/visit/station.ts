import * as z from 'zod';
import { arm, choice, count, density, identifier, line, list, mass, part, reference, volume } from './field.ts';

const common = (kind: 'load-station' | 'fuel-station') => ({
  id: identifier(['station', kind], 'Identifier', 'How the record names this station', 'left-seat'),
  name: line('Name', 'Name as printed on the loading sheet', 'Left seat', 40),
});

/** A seat or a baggage place: mass at one arm. */
export const LoadStation = part('Load station', 'A seat or a baggage place', {
  ...common('load-station'),
  kind: choice('Kind', 'What is carried here; the aircraft cannot fly without a pilot', [
    'pilot',
    'passenger',
    'baggage',
  ] as const),
  arm: arm('Arm', 'Arm of the load', 2180),
  minimumMass: mass(
    'Minimum mass',
    'Least mass when the station is used; for the pilot, the least solo pilot on the placard',
    55,
  ).optional(),
  maximumMass: mass('Maximum mass', 'Most mass that the station may carry', 110),
});

export const TankLevel = part('Tank level', 'Arm of the fuel at one content', {
  volume: volume('Volume', 'Total content of the tank', 40),
  arm: arm('Arm', 'Arm of the whole content', 2310),
});

/** A tank, with one arm or a table of arm against content. */
export const FuelStation = part('Fuel station', 'A fuel tank', {
  ...common('fuel-station'),
  kind: choice('Kind', 'A tank', ['fuel'] as const),
  arm: arm('Arm', 'Arm of the fuel, where it does not move with content', 2310).optional(),
  armByVolume: list(
    'Arm by volume',
    'Arm of the whole content against content, rising, from empty to full',
    TankLevel,
    {
      min: 2,
      max: 30,
    },
  ).optional(),
  capacity: volume('Capacity', 'Total content, unusable fuel included', 70, { min: 0.01 }),
  unusable: volume('Unusable fuel', 'Content that cannot be used; part of the empty mass', 2),
  density: density('Density', 'Density of the fuel used for planning', 0.72, { min: 0.01, max: 10 }),
  burnOrder: count('Burn order', 'Tanks with the same number empty together; lower numbers first', 1, {
    min: 1,
    max: 20,
  }).optional(),
});

export const Station = z
  .discriminatedUnion('kind', [LoadStation, FuelStation])
  .meta({ title: 'Station', description: 'A place that takes load' });

export const LoadingLimit = part('Loading limit', 'Greatest total that several stations may carry together', {
  id: identifier(['loading-limit'], 'Identifier', 'How the record names this limit', 'two-seats'),
  text: line('Text', 'Wording of the limit or placard', 'Both seats together: not above 172 kg'),
  stations: list(
    'Stations',
    'The load stations it joins',
    reference('load-station', 'Station', 'A load station of this aircraft', 'left-seat'),
    { min: 1, max: 40 },
  ),
  maximumMass: mass('Maximum mass', 'Greatest total of those stations', 172),
});
export type LoadingLimit = z.infer<typeof LoadingLimit>;
