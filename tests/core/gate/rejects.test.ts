import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../worker/core/gate/finding.ts';
import { RULES } from '../../../worker/core/gate/rules.ts';
import { valueAt } from '../../json-patch.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';
import { type Reject, rejectedRecord } from './reject.ts';

const codeOf = (name: string): string => name.split('.')[0] ?? name;

function assessReject(reject: Reject): { record: unknown; findings: Finding[] } {
  const { record, at } = rejectedRecord(reject);
  return { record, findings: assessRecord(record, at, reject.facts).findings };
}

describe('passGate() a reject causes the finding it is named after', () => {
  for (const name of fixturesIn('rejects')) {
    const reject = readFixture(`rejects/${name}`) as Reject;
    test(name, () => {
      const code = codeOf(name);
      const { record, findings } = assessReject(reject);
      const found = findings.filter((finding) => finding.code === code);
      expect(found.map(({ pointer }) => pointer)).toContain(reject.pointer);
      expect(found.map(({ severity }) => severity)).toEqual(
        found.map(() => RULES.find((rule) => rule.code === code)?.severity),
      );
      const blocking = new Set(findings.filter(({ severity }) => severity === 'blocks').map((finding) => finding.code));
      expect([...blocking].filter((other) => other !== code).sort()).toEqual([...(reject.also ?? [])].sort());
      for (const finding of findings) expectReadable(finding, record);
    });
  }
});

/** A finding is a sentence with its numbers, and points at something in the record or at what is missing there. */
function expectReadable({ sentence, remedy, source, pointer, data }: Finding, record: unknown): void {
  for (const text of [sentence, remedy, source]) {
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text.trim().length).toBeGreaterThan(3);
  }
  expect(Object.values(data).every((value) => typeof value !== 'number' || Number.isFinite(value))).toBe(true);
  expect(valueAt(record, pointer.slice(0, pointer.lastIndexOf('/'))), pointer).toBeDefined();
}

test('RULES every rule has a reject', () => {
  const covered = new Set(fixturesIn('rejects').map(codeOf));
  expect(RULES.map(({ code }) => code).filter((code) => !covered.has(code))).toEqual([]);
});

test('RULES no reject is named after a code that does not exist', () => {
  const codes = new Set(RULES.map(({ code }) => code));
  expect(
    fixturesIn('rejects')
      .map(codeOf)
      .filter((code) => !codes.has(code)),
  ).toEqual([]);
});

describe('passGate() a visit without fault', () => {
  for (const [name, at] of Object.entries(RELEASABLE_AT)) {
    test(`${name} is releasable`, () => {
      const { findings, isReleasable } = assessRecord(readFixture(`visits/${name}`), at);
      expect(
        findings.filter(({ severity, acknowledgedBy }) => severity !== 'note' && acknowledgedBy === undefined),
      ).toEqual([]);
      expect(isReleasable).toBe(true);
    });
  }
});
