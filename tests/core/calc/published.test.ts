import { describe, expect, test } from 'vitest';
import {
  type CaseStatus,
  type PublishedCase,
  type PublishedRow,
  publishedTable,
} from '../../../site/published/published-table.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

const ROWS = publishedTable();

const HEADINGS: Record<CaseStatus, string> = {
  read: 'published, inputs and output read',
  'read-in': 'inputs read, output worked by hand',
  derived: 'worked by hand from a rule that was read',
  memory: 'recalled from memory, not published until somebody reads it',
};

const residualOf = ({ expected, ours, residual, tolerance, source, place }: PublishedRow): string =>
  `expected ${expected}, ours ${ours}, residual ${residual.toPrecision(3)}, tolerance ${tolerance}; ${source}, ${place}`;

for (const [status, heading] of Object.entries(HEADINGS)) {
  describe(heading, () => {
    for (const row of ROWS.filter((entry) => entry.status === status)) {
      test(`${row.id} ${row.topic}: ${row.quantity}`, () => {
        // The sum of a printed figure and half a unit is itself rounded by a few parts in 10¹⁶.
        const allowed = row.tolerance * (1 + 1e-9) + Math.abs(row.expected) * 1e-12;
        expect(Math.abs(row.residual) <= allowed, residualOf(row)).toBe(true);
      });
    }
  });
}

test('fixtures/published/ holds one case a file, named after it, with a source, a place and a reason for its tolerance', () => {
  for (const name of fixturesIn('published')) {
    const { id, source, place, why, tolerance, expected } = readFixture(`published/${name}`) as PublishedCase;
    expect(id).toBe(name);
    for (const text of [source, place, why]) expect(text.length, name).toBeGreaterThan(4);
    expect(Object.keys(tolerance), name).toEqual(Object.keys(expected));
  }
});

test('at least thirty cases were read with inputs and output', () => {
  expect(new Set(ROWS.filter(({ status }) => status === 'read').map(({ id }) => id)).size).toBeGreaterThanOrEqual(30);
});
