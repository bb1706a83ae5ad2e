import { expect, test } from 'vitest';
import { redated } from '../../../worker/local/service/redated.ts';
import { assessed, posted } from '../../core/pack/fixture.ts';

test('redated() moves every date by the same days, so that the demo is releasable years from now', async () => {
  const record = posted('nose-wheel-full') as { visit: { arrivedAt: string; workEndedAt: string } };
  const later = redated(record, new Date('2041-03-02T07:00:00Z'));
  expect(later.visit).toMatchObject({
    arrivedAt: '2041-02-27T09:10:00+01:00',
    workEndedAt: '2041-03-01T14:05:00+01:00',
  });
  expect((await assessed(later, '2041-03-02T07:00:00Z')).isReleasable).toBe(true);
});

test('redated() moves dates in words and in texts, and no other figures', () => {
  const record = {
    visit: { arrivedAt: '2026-11-03T09:10:00+01:00' },
    scope: 'The weighing of 18 September 2026, part 2026-11-031, serial 12026-11-03, list of 2026-11-03.',
  };
  expect(redated(record, new Date('2026-11-14T07:00:00Z')).scope).toBe(
    'The weighing of 28 September 2026, part 2026-11-031, serial 12026-11-03, list of 2026-11-13.',
  );
});
