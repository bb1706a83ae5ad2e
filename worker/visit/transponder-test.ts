import * as m from '../text/generated/messages.ts';
import { choice, count, date, flag, line, number, part, person, timestamp } from './field.ts';

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

const sensitivity = (title: string, description: string, example: number) =>
  number(title, description, 'dBm', example, { min: -120, max: 0 });
const percent = (title: string, description: string, example: number) =>
  number(title, description, '%', example, { min: 0, max: 100 });

export const ModeSChecks = part('Mode S checks', 'What a Mode S transponder has to show besides its figures', {
  hasDiversity: flag('Diversity', 'It sends from two antennas, one at a time', false).optional(),
  isolationDb: number(
    'Isolation',
    'With diversity: power from the antenna selected over power from the other one',
    'dB',
    24,
    { min: -100, max: 100 },
  ).optional(),
  altitudeAgrees: flag(
    'Altitude agrees',
    'Replies to uplink format 4 have the altitude of Mode C replies',
    true,
  ).optional(),
  identityAgrees: flag(
    'Identity agrees',
    'Replies to uplink format 5 have the code of Mode 3/A replies',
    true,
  ).optional(),
  communicationFormats: choice('Communication formats', 'Replies to uplink formats 20, 21 and 24', [
    'correct',
    'wrong',
    'not-fitted',
  ] as const).optional(),
  allCallCorrect: flag(
    'All-call correct',
    'Replies to uplink format 11 have the right address and capability',
    true,
  ).optional(),
  repliedToModeAAllCall: flag(
    'Replied to a Mode A/C-only all-call',
    'It replied to the all-call with a P4 pulse of 0.8 µs, to which it must not',
    false,
  ).optional(),
  squitterCorrect: flag('Squitter', 'It sends a correct acquisition squitter about once a second', true).optional(),
});

export const TransponderTest = part('Transponder test', 'Figures of the transponder test', {
  at: timestamp('At', 'When', '2026-11-05T09:30:00+01:00', m.transponderTest_transponderTest),
  by: person('By', 'Person who tested', 'jonas', m.transponderTest_testedTransponder),
  testSet: TestSet,
  class: choice('Class', 'Class of the transponder: AC for Mode A and C, S for Mode S', TRANSPONDER_CLASSES),
  hasNarrowFrequency: flag(
    'Narrow reply frequency',
    'Mode S of a class B with the option of 1090 ± 1 MHz',
    false,
  ).optional(),
  hasHighPower: flag('High power', 'Mode S of a class B with the option of high peak output', false).optional(),
  replyFrequencyMhz: number('Reply frequency', 'Frequency of the replies', 'MHz', 1090.4, { min: 1000, max: 1200 }),
  outputDbw: number('Peak output', 'Peak output power', 'dBW', 21.8, { min: -20, max: 40 }),
  sensitivityDbm: sensitivity('Sensitivity', 'Minimum triggering level; of a Mode S transponder in Mode S', -74),
  sensitivityModeADbm: sensitivity('Sensitivity in Mode 3/A', 'Minimum triggering level in Mode 3/A', -73.6).optional(),
  sensitivityModeCDbm: sensitivity('Sensitivity in Mode C', 'Minimum triggering level in Mode C', -73.4).optional(),
  sidelobeRepliesPercent: percent('Replies with equal pulses', 'Replies with P2 equal to P1', 0),
  wantedRepliesPercent: percent('Replies with P2 9 dB down', 'Replies with P2 9 dB below P1', 99),
  repliesToOwnAddress: flag('Replies to its own address', 'Mode S only', true).optional(),
  otherAddressesTried: count('Other addresses tried', 'Mode S only: other addresses to which it did not reply', 2, {
    max: 100,
  }).optional(),
  repliedToOther: flag('Replied to another address', 'Mode S only', false).optional(),
  modeS: ModeSChecks.optional(),
});
