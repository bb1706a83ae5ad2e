import { expect, test } from 'vitest';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { earlierIssueOf } from '../../../worker/core/record/earlier-issue.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

const earlier = (record: unknown) => ({ pack: 'Q-TST-P1-1', issuedAt: '2026-11-05T14:20:00+01:00', record });

test.each(fixturesIn('visits'))('%s as sealed, with its members in another order, is the same issue', (name) => {
  const record = readFixture(`visits/${name}`);
  expect(earlierIssueOf(earlier(JSON.parse(canonicalJson(record))), record)).toBeUndefined();
});

test('a changed figure is found by its path', () => {
  const record = readFixture('visits/computed-only') as { aircraft: { seats: number } };
  const before = structuredClone(record);
  before.aircraft.seats = 5;
  expect(earlierIssueOf(earlier(before), record)?.changes).toEqual([
    { part: '/aircraft/seats', before: 5, now: record.aircraft.seats },
  ]);
});
