import type * as z from 'zod';
import { arm, choice, count, distance, flag, identifier, line, list, number, part, reference } from './field.ts';

export const AntennaPosition = part('antennaPosition', {
  arm: arm('antennaPosition_arm', 3180),
  right: distance('antennaPosition_right', 0),
  up: distance('antennaPosition_up', 620),
  side: choice('antennaPosition_side', ['top', 'bottom', 'fin', 'inside'] as const),
});

export const GroundPlane = part('groundPlane', {
  kind: choice('groundPlane_kind', ['metal-skin', 'sheet', 'mesh', 'foil', 'radials'] as const),
  size: line('groundPlane_size', '600 mm by 600 mm', 60),
  minimumRadius: distance('groundPlane_minimumRadius', 300, { min: 0 }),
});

export const AntennaCable = part('antennaCable', {
  type: line('antennaCable_type', 'RG-400', 40),
  lengthM: number('antennaCable_lengthM', 'm', 3.4, { min: 0, max: 100 }),
  lossDbPerM: number('antennaCable_lossDbPerM', 'dB/m', 0.15, { min: 0, max: 10 }),
  connectors: count('antennaCable_connectors', 2, { max: 20 }),
  lossDbPerConnector: number('antennaCable_lossDbPerConnector', 'dB', 0.1, { min: 0, max: 3 }),
  limitDb: number('antennaCable_limitDb', 'dB', 1.5, { min: 0, max: 20 }).optional(),
});

export const StandingWave = part('standingWave', {
  frequencyMhz: number('standingWave_frequencyMhz', 'MHz', 118, { min: 0.1, max: 10_000 }),
  ratio: number('standingWave_ratio', '1', 1.4, { min: 1, max: 100 }),
});

export const Antenna = part('antenna', {
  id: identifier(['antenna'], 'antenna_id', 'A-VHF'),
  name: line('antenna_name', 'VHF whip', 80),
  use: choice('antenna_use', [
    'vhf-radio',
    'transponder',
    'conspicuity',
    'satellite-position',
    'locator',
    'navigation',
    'other',
  ] as const),
  frequencyMhz: number('antenna_frequencyMhz', 'MHz', 127, { min: 0.1, max: 10_000 }),
  item: reference('equipment-item', 'antenna_item', 'E32').optional(),
  change: choice('antenna_change', ['kept', 'added', 'moved'] as const),
  position: AntennaPosition,
  needsGroundPlane: flag('antenna_needsGroundPlane', true),
  groundPlane: GroundPlane.optional(),
  cable: AntennaCable.optional(),
  bondMilliohm: number('antenna_bondMilliohm', 'mΩ', 1.2, {
    min: 0,
    max: 1_000_000,
  }).optional(),
  standingWaves: list('antenna_standingWaves', StandingWave, { max: 12 }).optional(),
  standingWaveLimit: number('antenna_standingWaveLimit', '1', 2, {
    min: 1,
    max: 100,
  }).optional(),
  frontalAreaCm2: number('antenna_frontalAreaCm2', 'cm²', 42, {
    min: 0,
    max: 10_000,
  }).optional(),
  minimumSpacing: distance('antenna_minimumSpacing', 700, {
    min: 0,
  }).optional(),
});

export const Antennas = part('antennas', {
  maximumSpeedKmh: number('antennas_maximumSpeedKmh', 'km/h', 240, {
    min: 0,
    max: 1500,
  }).optional(),
  items: list('antennas_items', Antenna, { min: 1, max: 24 }),
});
export type Antennas = z.infer<typeof Antennas>;
