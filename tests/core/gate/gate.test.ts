import { describe, expect, test } from 'vitest';
import type { Assessment } from '../../../worker/core/gate/gate.ts';
import { RULES } from '../../../worker/core/gate/rules.ts';
import { mergePatch } from '../../../worker/edge/http/merge-patch.ts';
import { readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

const FULL = readFixture('visits/nose-wheel-full');
const AT = RELEASABLE_AT['nose-wheel-full'] ?? '';

const assessFull = (patch: object): Assessment => assessRecord(mergePatch(FULL, patch), AT);

const accepting = (code: string, by = 'jonas'): object => ({
  acknowledgements: [
    { code, by, ground: 'measured-again', reason: 'Four runs in still air agreed within one step of the display' },
  ],
});

describe('passGate() cautions', () => {
  test('stop the release until a named person accepts them', () => {
    const { findings, isReleasable } = assessFull({ weighing: { indoors: false } });
    expect(findings.find(({ code }) => code === 'WEIGHED_OUTDOORS')?.acknowledgedBy).toBeUndefined();
    expect(isReleasable).toBe(false);
  });

  test('stay in the list, with who accepted them', () => {
    const accepted = assessFull({ weighing: { indoors: false }, release: accepting('WEIGHED_OUTDOORS') });
    expect(accepted.findings.find(({ code }) => code === 'WEIGHED_OUTDOORS')?.acknowledgedBy).toBe('jonas');
    expect(accepted.isReleasable).toBe(true);
  });

  test('cannot be accepted by somebody who may not release', () => {
    const accepted = assessFull({ weighing: { indoors: false }, release: accepting('WEIGHED_OUTDOORS', 'mila') });
    const outOfScope = accepted.findings.find(({ code }) => code === 'AUTHORISATION_OUT_OF_SCOPE');
    expect(outOfScope?.pointer).toBe('/release/acknowledgements/0/by');
    expect(accepted.isReleasable).toBe(false);
  });
});

test('passGate() what blocks cannot be accepted', () => {
  const accepted = assessFull({ weighing: { level: { lateralDeg: 3 } }, release: accepting('LEVEL_EXCEEDED') });
  expect(accepted.findings.find(({ code }) => code === 'LEVEL_EXCEEDED')?.acknowledgedBy).toBeUndefined();
  expect(accepted.findings.map(({ code }) => code)).toContain('ACKNOWLEDGEMENT_UNMATCHED');
  expect(accepted.isReleasable).toBe(false);
});

test('passGate() lists what blocks first, then cautions, then notes, each in the order of the rules', () => {
  const { findings } = assessFull({
    aircraft: { registration: 'q slm' },
    weighing: { indoors: false, level: { lateralDeg: 3 } },
    meters: { groundRunMinutes: 0 },
    release: { statement: 'all-is-well' },
  });
  const place = (code: string): number => RULES.findIndex((rule) => rule.code === code);
  const rank = { blocks: 0, caution: 1, note: 2 };
  const keys = findings.map(({ severity, code }) => rank[severity] * 1000 + place(code));
  expect(keys).toEqual([...keys].sort((a, b) => a - b));
  expect(findings.map(({ code }) => code)).toEqual([
    'REGISTRATION_MALFORMED',
    'LEVEL_EXCEEDED',
    'FLIGHT_IDENTITY_DIFFERS',
    'FLIGHT_IDENTITY_DIFFERS',
    'STATEMENT_UNKNOWN',
    'METERS_JUMP',
    'METERS_JUMP',
    'METERS_JUMP',
    'WEIGHED_OUTDOORS',
    'ADDRESS_OUTSIDE_STATE_BLOCK',
    'ADVICE_DECLINED',
  ]);
});

test('passGate() says the same of the same record twice', () => {
  const patch = { aircraft: { maximumMass: 370 }, weighing: { oilState: 'drained' } };
  expect(assessFull(patch).findings).toEqual(assessFull(patch).findings);
});

test('passGate() is content with a baseline that is the last sealed pack', () => {
  const record = mergePatch(FULL, { baseline: { reference: 'Q-SLM-0003-1' } });
  const lastPack = { pack: 'Q-SLM-0003-1', issuedAt: '2025-10-20T16:00:00+02:00', visit: 'v3', recordSha256: '00' };
  expect(assessRecord(record, AT, { lastPack }).isReleasable).toBe(true);
});

test('passGate() prints the numbers of a finding in the units of the record', () => {
  const record = mergePatch(readFixture('visits/weighing-only'), { aircraft: { maximumEmptyMass: 740 } });
  const { findings } = assessRecord(record, RELEASABLE_AT['weighing-only'] ?? '');
  expect(findings.find(({ code }) => code === 'EMPTY_MASS_ABOVE_CAP')?.sentence).toBe(
    'The empty mass, 749.8\u00a0lb, is over its limit, 740.0\u00a0lb',
  );
});
