import { describe, expect, test } from 'vitest';
import { compute } from '../../../worker/core/calc/results.ts';
import type { WorkEvent } from '../../../worker/core/gate/obligations/event.ts';
import { EVIDENCE_RULES } from '../../../worker/core/gate/obligations/evidence-rules.ts';
import { unfitFor } from '../../../worker/core/gate/obligations/not-required.ts';
import { isAnswered, type Requirement } from '../../../worker/core/gate/obligations/requirement.ts';
import { OBLIGATIONS } from '../../../worker/core/gate/obligations/table.ts';
import { regimeNamed } from '../../../worker/core/gate/regimes/table.ts';
import { ruleInput } from '../../../worker/core/gate/rule-input.ts';
import { EVIDENCE, type Evidence } from '../../../worker/core/record/not-required.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import type { NotRequired, Visit } from '../../../worker/core/record/visit.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';
import { type Reject, rejectedRecord } from './reject.ts';

/** A visit in which something happened, and nothing that it requires is shown. */
type Lack = Reject & { requires: Evidence[] };

function requirementsIn(record: unknown, at: string, facts: Reject['facts'] = {}): readonly Requirement[] {
  const read = readRecord(record);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { visit } = read;
  const regime = regimeNamed(visit.aircraft.regime);
  const results = compute(visit, {
    leastPilotKg: regime.leastPilotKg.value,
    standardPersonKg: regime.standardPersonKg.value,
    at,
  });
  return ruleInput(visit, results, regime, { at, facts }).requirements;
}

describe('a line of the table without its evidence', () => {
  for (const obligation of OBLIGATIONS) {
    test(obligation.id, () => {
      const lack = readFixture(`obligations/${obligation.id}`) as Lack;
      const { record, at } = rejectedRecord(lack);
      const open = requirementsIn(record, at, lack.facts).filter((requirement) => !isAnswered(requirement));
      const ofLine = open
        .filter((requirement) => requirement.obligation.id === obligation.id)
        .map(({ evidence }) => evidence);
      expect(new Set(ofLine)).toEqual(new Set(lack.requires));
      const codes = assessRecord(record, at, lack.facts).findings.map(({ code }) => code);
      for (const evidence of lack.requires) expect(codes).toContain(EVIDENCE_RULES[evidence].code);
    });
  }
});

test('every line has a fixture that lacks its evidence, and every fixture a line', () => {
  expect(fixturesIn('obligations').toSorted()).toEqual(OBLIGATIONS.map(({ id }) => id).toSorted());
});

test('every piece of evidence is requirement by a line', () => {
  const requirement = new Set(OBLIGATIONS.flatMap(({ requires }) => requires));
  expect(EVIDENCE.filter((each) => !requirement.has(each))).toEqual([]);
});

describe('visits of every class answer what they owe', () => {
  for (const [name, at] of Object.entries(RELEASABLE_AT)) {
    test(name, () => {
      const open = requirementsIn(readFixture(`visits/${name}`), at).filter((requirement) => !isAnswered(requirement));
      expect(open.map(({ evidence, event }) => [evidence, event.names])).toEqual([]);
    });
  }
});

test('evidence older than the work does not count', () => {
  const record = structuredClone(readFixture('visits/nose-wheel-full')) as {
    surveillance: { transponderTest: { at: string } };
  };
  record.surveillance.transponderTest.at = '2026-11-04T17:00:00+01:00';
  const { findings } = assessRecord(record, RELEASABLE_AT['nose-wheel-full'] ?? '');
  const found = findings.find(({ code }) => code === 'TRANSPONDER_TEST_MISSING');
  expect(found?.sentence).toContain('before the work');
});

describe('who may state that something is not requirement', () => {
  const person = (id: string, scope: string[], more = {}) => ({ id, name: id, capacity: 'Mechanic', scope, ...more });
  const visit = {
    people: [
      person('doer', ['airframe']),
      person('other', ['airframe']),
      person('chief', ['release']),
      person('expired', ['release'], { validUntil: '2026-10-08' }),
      person('guest', []),
    ],
    release: { limitations: ['Day VFR only'] },
  } as unknown as Visit;
  const event = { by: ['doer'], names: ['E1'] } as unknown as WorkEvent;
  const statement = (by: string, secondBy?: string): NotRequired => ({
    evidence: 'antenna-check',
    reason: 'not-touched',
    shownBy: 'Manual 4.2',
    by,
    ...(secondBy !== undefined && { secondBy }),
    at: '2026-10-09T14:00:00+02:00',
  });
  const reasons = ['not-touched'] as const;
  test.each([
    ['nobody', 'chief', 'nobody-may'],
    ['doer', 'doer', undefined],
    ['doer', 'guest', 'person'],
    ['another', 'doer', 'person'],
    ['another', 'other', undefined],
    ['releaser', 'other', 'person'],
    ['releaser', 'chief', undefined],
    ['releaser', 'expired', 'person'],
    ['two-people', 'chief', 'second-person'],
  ] as const)('%s: %s', (notRequiredBy, by, unfit) => {
    expect(unfitFor(statement(by), { notRequiredBy, reasons }, event, { visit })).toBe(unfit);
  });
  test('two people: not the same one twice, nor one without authorisation', () => {
    const of = { notRequiredBy: 'two-people', reasons } as const;
    expect(unfitFor(statement('chief', 'chief'), of, event, { visit })).toBe('second-person');
    expect(unfitFor(statement('chief', 'guest'), of, event, { visit })).toBe('second-person');
    expect(unfitFor(statement('chief', 'other'), of, event, { visit })).toBeUndefined();
  });
  test('a reason counts only if the line accepts it; a limitation must be there', () => {
    const accepts = { notRequiredBy: 'releaser', reasons: ['excluded-by-limitation'] } as const;
    expect(unfitFor(statement('chief'), accepts, event, { visit })).toBe('reason');
    const limited = { ...statement('chief'), reason: 'excluded-by-limitation' as const };
    expect(unfitFor(limited, accepts, event, { visit })).toBeUndefined();
    expect(unfitFor(limited, accepts, event, { visit: { ...visit, release: undefined } as Visit })).toBe('limitation');
  });
});
