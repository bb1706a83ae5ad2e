import type * as z from 'zod';
import { arm, choice, count, distance, flag, identifier, line, list, number, part, reference } from './field.ts';

export const AntennaPosition = part('Position', 'Where it stands', {
  arm: arm('Arm', 'Arm of its base', 3180),
  right: distance('Right', 'Distance right of the middle; left is negative', 0),
  up: distance('Up', 'Height above the levelling line; below is negative', 620),
  side: choice('Side', 'Which side of the airframe', ['top', 'bottom', 'fin', 'inside'] as const),
});

export const GroundPlane = part('Ground plane', 'The metal under the antenna', {
  kind: choice('Kind', 'What it is', ['metal-skin', 'sheet', 'mesh', 'foil', 'radials'] as const),
  size: line('Size', 'Shape and size', '600 mm by 600 mm', 60),
  leastRadius: distance('Least radius', 'From the base to its nearest edge', 300, { min: 0 }),
});

export const AntennaCable = part('Cable', 'The feed', {
  type: line('Type', 'Type', 'RG-400', 40),
  lengthM: number('Length', 'Length', 'm', 3.4, { min: 0, max: 100 }),
  lossDbPerM: number('Loss', 'Loss of a metre at this frequency', 'dB/m', 0.15, { min: 0, max: 10 }),
  connectors: count('Connectors', 'Connectors in the feed', 2, { max: 20 }),
  lossDbPerConnector: number('Loss of a connector', 'Loss of one connector', 'dB', 0.1, { min: 0, max: 3 }),
  limitDb: number('Limit', 'Greatest loss allowed by the equipment', 'dB', 1.5, { min: 0, max: 20 }).optional(),
});

export const StandingWave = part('Standing wave', 'Standing wave ratio at one frequency', {
  frequencyMhz: number('Frequency', 'Frequency', 'MHz', 118, { min: 0.1, max: 10_000 }),
  ratio: number('Ratio', 'Standing wave ratio', '1', 1.4, { min: 1, max: 100 }),
});

export const Antenna = part('Antenna', 'One antenna', {
  id: identifier(['antenna'], 'Identifier', 'How the record names it', 'A-VHF'),
  name: line('Name', 'What it is', 'VHF whip', 80),
  use: choice('Use', 'What it serves', [
    'vhf-radio',
    'transponder',
    'conspicuity',
    'satellite-position',
    'locator',
    'navigation',
    'other',
  ] as const),
  frequencyMhz: number('Frequency', 'Middle of its band', 'MHz', 127, { min: 0.1, max: 10_000 }),
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E32').optional(),
  change: choice('Change', 'What the visit did to it', ['kept', 'added', 'moved'] as const),
  position: AntennaPosition,
  needsGroundPlane: flag('Needs a ground plane', 'False for a dipole or a patch that brings its own', true),
  groundPlane: GroundPlane.optional(),
  cable: AntennaCable.optional(),
  bondMilliohm: number('Bond', 'Resistance from its base to the ground plane', 'mΩ', 1.2, {
    min: 0,
    max: 1_000_000,
  }).optional(),
  standingWaves: list('Standing waves', 'As measured', StandingWave, { max: 12 }).optional(),
  standingWaveLimit: number('Standing wave limit', 'Greatest ratio allowed by the equipment', '1', 2, {
    min: 1,
    max: 100,
  }).optional(),
  frontalAreaCm2: number('Frontal area', 'Area that it shows to the wind', 'cm²', 42, {
    min: 0,
    max: 10_000,
  }).optional(),
  leastSpacing: distance('Least spacing', 'Distance to other antennas asked for by its maker', 700, {
    min: 0,
  }).optional(),
});

export const Antennas = part('Antennas', 'Antennas, their ground planes, feeds and spacing', {
  maximumSpeedKmh: number('Maximum speed', 'Speed never to exceed, for the drag', 'km/h', 240, {
    min: 0,
    max: 1500,
  }).optional(),
  items: list('Antennas', 'Every antenna of the aircraft', Antenna, { min: 1, max: 24 }),
});
export type Antennas = z.infer<typeof Antennas>;
