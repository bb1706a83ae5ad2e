import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { AltimeterTest, Encoder, StaticSystem } from './altimetry.ts';
import { choice, count, flag, identifier, line, list, number, part, person, reference, timestamp } from './field.ts';
import { TransponderTest } from './transponder-test.ts';

const address = (title: string, description: string) => line(title, description, 'F00A31', 24);

export const ReadBack = part('Read-back', 'What was received off the air', {
  address: address('Address', 'Address as received, six hexadecimal digits'),
  flightIdentity: line('Flight identity', 'Flight identity as received', 'QSLM', 8).optional(),
  at: timestamp('At', 'When', '2026-11-05T09:30:00+01:00', m.surveillance_readBack),
  by: person('By', 'Person who received it', 'jonas', m.surveillance_received),
});

export const Device = part('Device', 'A transponder, conspicuity device or other transmitter of an aircraft address', {
  id: identifier(['device'], 'Identifier', 'How the record names this device', 'transponder'),
  kind: choice('Kind', 'What it is', ['transponder', 'conspicuity', 'locator'] as const),
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E33').optional(),
  addressSet: address(
    'Address set',
    'Address as entered, in hexadecimal, octal (8 digits) or binary (24 digits)',
  ).optional(),
  flightIdentitySet: line(
    'Flight identity set',
    'Flight identity as entered: marks without hyphen, or the call sign',
    'QSLM',
    8,
  ).optional(),
  emitterCategory: choice('Emitter category', 'Category as entered', [
    'light',
    'ultralight',
    'glider',
    'rotorcraft',
    'other',
    'not-set',
  ] as const).optional(),
  positionSource: choice('Position source', 'What feeds its position', [
    'none',
    'certified',
    'uncertified',
  ] as const).optional(),
  sourceIntegrityLevel: count('Source integrity level', 'SIL as set', 0, { max: 3 }).optional(),
  systemDesignAssurance: count('System design assurance', 'SDA as set', 0, { max: 3 }).optional(),
  readBack: ReadBack.optional(),
});

export const RadioCheck = part('Radio check', 'A two-way check of a radio', {
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E31').optional(),
  at: timestamp('At', 'When', '2026-11-05T13:20:00+01:00', m.surveillance_radioCheck),
  by: person('By', 'Person who made it', 'mila', m.surveillance_checkedRadio),
  with: line('With', 'Station and distance', 'Lower Meadow Radio, 4 km'),
  frequencyMhz: number('Frequency', 'Frequency', 'MHz', 122.005, { min: 100, max: 500 }),
  readability: count('Readability', '1 to 5', 5, { min: 1, max: 5 }),
});

export const Surveillance = part(
  'Radio and surveillance',
  'Settings and tests of transponder, conspicuity devices, altimetry and radios',
  {
    devices: list('Devices', 'Everything that sends an aircraft address', Device, { max: 12 }),
    transponderTest: TransponderTest.optional(),
    encoder: Encoder.optional(),
    altimeter: AltimeterTest.optional(),
    staticSystem: StaticSystem.optional(),
    radioChecks: list('Radio checks', 'Two-way checks', RadioCheck, { max: 20 }).optional(),
    interferenceChecked: flag(
      'Interference checked',
      'All equipment on, engine running, nothing disturbs',
      true,
    ).optional(),
  },
);
export type Surveillance = z.infer<typeof Surveillance>;
