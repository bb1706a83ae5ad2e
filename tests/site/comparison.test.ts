import { expect, test } from 'vitest';
import { comparisonOf } from '../../site/browser/thread/comparison.ts';
import { assessRecord, RELEASABLE_AT } from '../core/gate/assess-record.ts';
import { readFixture } from '../read-fixture.ts';

const NAME = 'nose-wheel-full';

test('comparisonOf() says of what a small record leaves out that it is not in the record, and not that it ended', () => {
  const record = readFixture(`visits/${NAME}`) as { release: object };
  const { limitations: _, ...release } = record.release as { limitations: string[] };
  const at = RELEASABLE_AT[NAME] ?? '';
  const before = assessRecord(record, at);
  const now = assessRecord({ ...record, release, lives: undefined, wiring: undefined }, at);
  const rows = (name: string) => comparisonOf(before, now).find((group) => group.name === name)?.rows ?? [];
  for (const name of ['Limits', 'Wiring', 'Due']) {
    expect(rows(name).length, name).toBeGreaterThan(0);
    expect(new Set(rows(name).map((row) => row.now)), name).toEqual(new Set(['not in the record']));
  }
  expect(rows('Limits')).toEqual([
    { name: expect.stringMatching(/^Limitation: /), before: 'in force', now: 'not in the record' },
  ]);
});
