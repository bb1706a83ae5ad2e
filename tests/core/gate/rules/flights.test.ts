import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../../worker/core/gate/finding.ts';
import type { ArchiveFacts } from '../../../../worker/core/gate/rule.ts';
import { type Operation, patched } from '../../../json-patch.ts';
import { readFixture } from '../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../assess-record.ts';

const findingsOf = (name: string, patch: Operation[], facts?: ArchiveFacts): Finding[] =>
  assessRecord(patched(readFixture(`visits/${name}`), patch), RELEASABLE_AT[name] ?? '', facts).findings;

const codes = (name: string, patch: Operation[], facts?: ArchiveFacts): string[] => [
  ...new Set(
    findingsOf(name, patch, facts).flatMap(({ code, severity, acknowledgedBy }) =>
      severity === 'note' || acknowledgedBy !== undefined ? [] : [code],
    ),
  ),
];

const replace = (path: string, value: unknown): Operation => ({ op: 'replace', path, value });

describe('a flight before the release', () => {
  test('explains what the meters ran and the landings', () => {
    expect(codes('helicopter', [])).toEqual([]);
    expect(codes('helicopter', [replace('/flights/0/minutes', 3)])).toEqual(['METERS_JUMP']);
    expect(codes('helicopter', [replace('/flights/0/landings', 3)])).toEqual(['LANDINGS_UNCOUNTED']);
  });

  test('fulfils a flight test that is outstanding, a word among the limitations does not', () => {
    expect(codes('helicopter', [replace('/modifications/0/flightTest', 'owed')])).toEqual([]);
    const unflown: Operation[] = [
      replace('/modifications/0/flightTest', 'owed'),
      replace('/flights/0/for', []),
      { op: 'add', path: '/release/limitations', value: ['Flight test before normal use'] },
    ];
    expect(codes('helicopter', unflown)).toEqual(['FLIGHT_TEST_OWED_UNSTATED']);
    const after = { modification: 'M1', flownBy: 'Ines Dahl, alone', limitation: 'In the circuit only' };
    const permitted: Operation = { op: 'add', path: '/release/flightTestsAfterRelease', value: [after] };
    expect(codes('helicopter', [...unflown, permitted])).toEqual([]);
  });

  test('closes an open flight test of an earlier pack that it names, also one flown before the arrival', () => {
    const open = {
      item: 'Q-HVR-P1/M7',
      id: 'M7',
      kind: 'test',
      text: 'Skids raised',
      until: {},
      of: 'airframe',
    } as const;
    const facts: ArchiveFacts = { open: [open] };
    const answer = {
      ...{ item: open.item, answer: 'closed', by: 'bram', at: '2026-10-14T13:00:00-05:00' },
      ...{ reason: 'Flown, satisfactory', evidence: 'V1' },
    };
    const carried: Operation = { op: 'add', path: '/carried', value: [answer] };
    const named: Operation = { op: 'add', path: '/flights/0/openItems', value: [open.item] };
    expect(codes('helicopter', [carried, named], facts)).toEqual([]);
    expect(codes('helicopter', [carried], facts)).toEqual(['FLIGHT_TEST_CLOSED_UNFLOWN']);
    expect(codes('helicopter', [named], facts)).toEqual(['OPEN_ITEM_UNANSWERED']);
    const earlier = { ...answer, evidence: 'V0' };
    const byOwner: Operation[] = [
      { op: 'add', path: '/carried', value: [earlier] },
      {
        op: 'add',
        path: '/flights/-',
        value: {
          ...{ id: 'V0', by: 'ines', from: '2026-09-02T10:00:00-05:00', minutes: 40, landings: 3, purpose: 'test' },
          ...{ openItems: [open.item], report: 'As scheduled', result: 'satisfactory' },
        },
      },
    ];
    expect(codes('helicopter', byOwner, facts)).toEqual([]);
    // It is in the readings at arrival, so it explains nothing that the meters ran since.
    expect(codes('helicopter', [...byOwner, replace('/flights/0/minutes', 1)], facts)).toEqual(['METERS_JUMP']);
  });
});

describe('readings before an adjustment', () => {
  test('may be outside their limits, if there are readings after it', () => {
    expect(codes('helicopter', [replace('/measurements/balances/0/when', 'after')])).toEqual([
      'MEASUREMENT_OUTSIDE_LIMITS',
    ]);
    expect(codes('helicopter', [{ op: 'remove', path: '/measurements/balances/1' }])).toEqual([
      'MEASUREMENT_OUTSIDE_LIMITS',
    ]);
  });
});

describe('a finding on one of several instruments', () => {
  test('names it', () => {
    const [found] = findingsOf('four-seat-tourer', [replace('/surveillance/altimeters/1/scale/2/readFt', 3040)]).filter(
      ({ code }) => code === 'ALTIMETER_TEST_FAILED',
    );
    expect(found?.pointer).toBe('/surveillance/altimeters/1');
    expect(found?.sentence).toMatch(/3000 ft \(Display\): 40 ft/);
  });
});
