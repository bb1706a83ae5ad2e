import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { LIMITS } from '../../../worker/core/limits.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { type RecordIssue, recordIssues } from '../../../worker/core/record/record-issue.ts';
import { type Operation, patched } from '../../json-patch.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

/** What `fixtures/rejects/records/` holds: a visit, what is done to it, and every issue that must follow. */
interface RecordReject {
  of: string;
  patch: Operation[];
  issues: { code: RecordIssue['code']; pointer: string; remedyNames?: string }[];
}

const issuesOf = (input: unknown): RecordIssue[] => {
  const read = readRecord(input);
  return read.ok ? [] : read.issues;
};

const place = ({ code, pointer }: { code: string; pointer: string }): string => `${code} ${pointer}`;

describe('readRecord() names every place that does not fit, at once', () => {
  for (const name of fixturesIn('rejects/records')) {
    test(name, () => {
      const { of, patch, issues: expected } = readFixture(`rejects/records/${name}`) as RecordReject;
      const issues = issuesOf(patched(readFixture(`visits/${of}`), patch));
      expect(issues.map(place).sort()).toEqual(expected.map(place).sort());
      for (const { sentence, remedy } of issues) {
        expect(sentence).toMatch(/^Cannot read the record: /);
        expect(`${sentence} ${remedy}`).not.toMatch(/undefined|\[object/);
      }
      for (const { pointer, remedyNames } of expected) {
        const issue = issues.find((found) => found.pointer === pointer);
        if (remedyNames) expect(`${issue?.sentence} ${issue?.remedy}`).toContain(`"${remedyNames}"`);
      }
    });
  }

  test('and says what is wanted, what was found, and what such a field looks like', () => {
    const [issue] = issuesOf(
      patched(readFixture('visits/weighing-only'), [{ op: 'replace', path: '/units/mass', value: 'stone' }]),
    );
    expect(issue?.sentence).toBe(
      'Cannot read the record: Mass unit (/units/mass) must be one of "kg", "lb": current value is "stone"',
    );
    expect(issue?.remedy).toBe('Correct it: For all masses in the record; for example "kg"');
  });

  for (const input of [null, 7, 'text', [], true, undefined]) {
    test(`for a record that is ${JSON.stringify(input)}`, () => expect(issuesOf(input).length).toBeGreaterThan(0));
  }

  test('up to a bound', () => {
    const people = Array.from({ length: 90 }, () => ({ a: 1, b: 2, c: 3 }));
    const record = patched(readFixture('visits/weighing-only'), [{ op: 'replace', path: '/people', value: people }]);
    expect(issuesOf(record)).toHaveLength(LIMITS.recordIssues);
  });

  test('and looks at no more keys than it names', () => {
    let looked = 0;
    const keys = new Proxy(
      Array.from({ length: 90_000 }, (_, i) => `k${i}`),
      {
        get(target, key) {
          if (typeof key === 'string' && /^\d+$/.test(key)) looked += 1;
          return Reflect.get(target, key);
        },
      },
    );
    const unknown = { code: 'unrecognized_keys', keys, path: [], message: '', input: {} } as const;
    const error = new z.ZodError([unknown as unknown as z.core.$ZodIssue, unknown as unknown as z.core.$ZodIssue]);
    expect(recordIssues(error, { input: {}, posted: {}, pathAsPosted: (path) => path })).toHaveLength(
      LIMITS.recordIssues,
    );
    expect(looked).toBeLessThanOrEqual(LIMITS.recordIssues);
  });
});
