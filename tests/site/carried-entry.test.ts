import { applyEdits } from 'jsonc-parser';
import { describe, expect, test } from 'vitest';
import { carriedEntry } from '../../site/browser/bench/carried-entry.ts';
import { readFixture } from '../read-fixture.ts';

const ITEM = 'Q-SLM-P1/F4';

/** The text with the answer in it, and with a reason typed where the cursor is left. */
function answered(text: string, reason: string): string {
  const entry = carriedEntry(text, ITEM);
  if (typeof entry === 'string') throw new Error(entry);
  const made = applyEdits(text, entry.edits);
  return made.slice(0, entry.reason.from) + reason + made.slice(entry.reason.to);
}

const expected = (at: string) => ({ item: ITEM, answer: 'closed', by: '', at, reason: 'Overhauled', evidence: '' });

describe('carriedEntry()', () => {
  test('puts an answer at the end of carried, and leaves the cursor in its reason', () => {
    const before = { item: 'Q-SLM-P1/L02', answer: 'repeated', by: 'jonas', at: '2026-11-05T13:10:00+01:00' };
    const visit = { arrivedAt: '2026-11-03T09:10:00+01:00', workEndedAt: '2026-11-05T13:20:00+01:00' };
    const text = JSON.stringify({ visit, carried: [before], release: { by: 'jonas' } }, null, 2);
    const record = JSON.parse(answered(text, 'Overhauled'));
    expect(record).toEqual({ visit, carried: [before, expected(visit.workEndedAt)], release: { by: 'jonas' } });
  });

  test('makes the list where the record has none, and leaves all else as it was typed', () => {
    const fixture = readFixture('visits/weighing-only');
    const text = JSON.stringify(fixture, null, 4);
    const made = answered(text, 'Overhauled');
    const { carried, ...others } = JSON.parse(made);
    expect(others).toEqual(fixture);
    expect(carried).toHaveLength(1);
    expect(made).toContain(text.slice(0, text.lastIndexOf('}')).trimEnd());
  });

  test('makes none in a text that cannot be read, or is no record', () => {
    for (const text of ['', '{ "a": ', '[]', '{ "carried": 1 }', '['.repeat(200_000)])
      expect(carriedEntry(text, ITEM), text.slice(0, 20)).toMatch(/fix/);
  });
});
