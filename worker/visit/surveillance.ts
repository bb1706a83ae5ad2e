import type { z } from 'zod';
import { choice, count, date, flag, id, line, list, moment, number, part } from './field.ts';

const address = (title: string, description: string) => line(title, description, 'F00A31', 24);

export const ReadBack = part('Read-back', 'What was received off the air', {
  address: address('Address', 'Address as received, six hexadecimal digits'),
  flightIdentity: line('Flight identity', 'Flight identity as received', 'QSLM', 8).optional(),
  at: moment('At', 'When', '2026-11-05T09:30:00+01:00'),
  by: id('By', 'Person who received it', 'jonas'),
});

export const Device = part('Device', 'A transponder, conspicuity device or other transmitter of an aircraft address', {
  id: id('Identifier', 'How the record names this device', 'transponder'),
  kind: choice('Kind', 'What it is', ['transponder', 'conspicuity', 'locator'] as const),
  item: id('Item', 'Line of the equipment list', 'E33').optional(),
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

export const TestSet = part('Test set', 'The instrument used', {
  serial: line('Serial number', 'Serial number', 'TS-118', 60),
  calibrationDueOn: date('Calibration due', 'Last day on which its calibration holds', '2027-03-31'),
  isPortable: flag('Portable', 'Coupled through the air, so that 3 dB are allowed for', true).optional(),
});

export const TRANSPONDER_CLASSES = [
  'AC-1A',
  'AC-2A',
  'AC-1B',
  'AC-2B',
  'AC-3B',
  'S-1A',
  'S-2A',
  'S-3A',
  'S-4',
  'S-1B',
  'S-2B',
  'S-3B',
] as const;

export const TransponderTest = part('Transponder test', 'Figures of the transponder test', {
  at: moment('At', 'When', '2026-11-05T09:30:00+01:00'),
  by: id('By', 'Person who tested', 'jonas'),
  testSet: TestSet,
  class: choice('Class', 'Class of the transponder: AC for Mode A and C, S for Mode S', TRANSPONDER_CLASSES),
  replyFrequencyMhz: number('Reply frequency', 'Frequency of the replies', 'MHz', 1090.4, { min: 1000, max: 1200 }),
  outputDbw: number('Peak output', 'Peak output power', 'dBW', 21.8, { min: -20, max: 40 }),
  sensitivityDbm: number('Sensitivity', 'Minimum triggering level', 'dBm', -74, { min: -120, max: 0 }),
  sidelobeRepliesPercent: number('Replies with equal pulses', 'Replies with P2 equal to P1', '%', 0, {
    min: 0,
    max: 100,
  }),
  wantedRepliesPercent: number('Replies with P2 9 dB down', 'Replies with P2 9 dB below P1', '%', 99, {
    min: 0,
    max: 100,
  }),
  repliesToOwnAddress: flag('Replies to its own address', 'Mode S only', true).optional(),
  otherAddressesTried: count('Other addresses tried', 'Mode S only: other addresses to which it did not reply', 2, {
    max: 100,
  }).optional(),
  repliedToOther: flag('Replied to another address', 'Mode S only', false).optional(),
});

export const EncoderPoint = part('Encoder point', 'Encoder against altimeter at one level', {
  altimeterFt: number('Altimeter', 'Altimeter at 1013.25 hPa', 'ft', 5000, { min: -1000, max: 60_000 }),
  encoderFt: number('Encoder', 'Level reported', 'ft', 5000, { min: -1300, max: 127_000 }),
});

export const ScalePoint = part('Scale point', 'Altimeter against the reference pressure', {
  trueFt: number('True', 'Altitude of the reference pressure', 'ft', 5000, { min: -1000, max: 50_000 }),
  readFt: number('Read', 'What the altimeter shows', 'ft', 5010, { min: -2000, max: 60_000 }),
});

export const AltimeterTest = part('Altimeter test', 'Figures of the altimeter test', {
  at: moment('At', 'When', '2026-11-05T09:10:00+01:00'),
  by: id('By', 'Person who tested', 'jonas'),
  maximumFt: number('Maximum altitude', 'Altitude to which it was tested', 'ft', 12_000, { min: 0, max: 50_000 }),
  scale: list('Scale', 'Scale error', ScalePoint, { min: 1, max: 60 }),
  caseLeakFt: number('Case leak', 'Loss in one minute at 18,000 ft', 'ft', 20, { min: 0, max: 10_000 }).optional(),
  afterEffectFt: number('After-effect', 'Difference after the test', 'ft', 10, { min: 0, max: 10_000 }).optional(),
});

export const Encoder = part('Encoder', 'Altitude encoder against altimeter', {
  at: moment('At', 'When', '2026-11-05T09:45:00+01:00'),
  by: id('By', 'Person who tested', 'jonas'),
  points: list('Points', 'Every level', EncoderPoint, { min: 1, max: 60 }),
});

export const RadioCheck = part('Radio check', 'A two-way check of a radio', {
  item: id('Item', 'Line of the equipment list', 'E31').optional(),
  at: moment('At', 'When', '2026-11-05T13:20:00+01:00'),
  by: id('By', 'Person who made it', 'mila'),
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
    radioChecks: list('Radio checks', 'Two-way checks', RadioCheck, { max: 20 }).optional(),
    interferenceChecked: flag(
      'Interference checked',
      'All equipment on, engine running, nothing disturbs',
      true,
    ).optional(),
  },
);
export type Surveillance = z.infer<typeof Surveillance>;
