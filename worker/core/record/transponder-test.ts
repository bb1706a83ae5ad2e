import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { choice, count, date, flag, line, number, part, person, timestamp } from './field.ts';

export const TestSet = part('testSet', {
  serial: line('testSet_serial', 'TS-118', 60),
  calibrationDueOn: date('testSet_calibrationDueOn', '2027-03-31'),
  isPortable: flag('testSet_isPortable', true).optional(),
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

const sensitivity = (text: FieldText, example: number) => number(text, 'dBm', example, { min: -120, max: 0 });
const percent = (text: FieldText, example: number) => number(text, '%', example, { min: 0, max: 100 });

export const ModeSChecks = part('modeSChecks', {
  hasDiversity: flag('modeSChecks_hasDiversity', false).optional(),
  isolationDb: number('modeSChecks_isolationDb', 'dB', 24, { min: -100, max: 100 }).optional(),
  altitudeAgrees: flag('modeSChecks_altitudeAgrees', true).optional(),
  identityAgrees: flag('modeSChecks_identityAgrees', true).optional(),
  communicationFormats: choice('modeSChecks_communicationFormats', [
    'correct',
    'wrong',
    'not-fitted',
  ] as const).optional(),
  allCallCorrect: flag('modeSChecks_allCallCorrect', true).optional(),
  repliedToModeAAllCall: flag('modeSChecks_repliedToModeAAllCall', false).optional(),
  squitterCorrect: flag('modeSChecks_squitterCorrect', true).optional(),
});

export const TransponderTest = part('transponderTest', {
  at: timestamp('transponderTest_at', '2026-11-05T09:30:00+01:00', m.transponderTest_transponderTest),
  by: person('transponderTest_by', 'jonas', m.transponderTest_testedTransponder),
  testSet: TestSet,
  class: choice('transponderTest_class', TRANSPONDER_CLASSES),
  hasNarrowFrequency: flag('transponderTest_hasNarrowFrequency', false).optional(),
  hasHighPower: flag('transponderTest_hasHighPower', false).optional(),
  replyFrequencyMhz: number('transponderTest_replyFrequencyMhz', 'MHz', 1090.4, { min: 1000, max: 1200 }),
  outputDbw: number('transponderTest_outputDbw', 'dBW', 21.8, { min: -20, max: 40 }),
  sensitivityDbm: sensitivity('transponderTest_sensitivityDbm', -74),
  sensitivityModeADbm: sensitivity('transponderTest_sensitivityModeADbm', -73.6).optional(),
  sensitivityModeCDbm: sensitivity('transponderTest_sensitivityModeCDbm', -73.4).optional(),
  sidelobeRepliesPercent: percent('transponderTest_sidelobeRepliesPercent', 0),
  wantedRepliesPercent: percent('transponderTest_wantedRepliesPercent', 99),
  repliesToOwnAddress: flag('transponderTest_repliesToOwnAddress', true).optional(),
  otherAddressesTried: count('transponderTest_otherAddressesTried', 2, {
    max: 100,
  }).optional(),
  repliedToOther: flag('transponderTest_repliedToOther', false).optional(),
  modeS: ModeSChecks.optional(),
});
