import { expect, test } from 'vitest';
import { redated } from '../../worker/embedded/redated.ts';
import { assessed, posted } from '../pack/fixture.ts';

test('redated() moves every date by the same days, so that the demo is releasable years from now', async () => {
  const record = posted('nose-wheel-full') as { visit: { arrivedAt: string; workEndedAt: string } };
  const later = redated(record, new Date('2041-03-02T07:00:00Z'));
  expect(later.visit).toMatchObject({
    arrivedAt: '2041-02-27T09:10:00+01:00',
    workEndedAt: '2041-03-01T14:05:00+01:00',
  });
  expect((await assessed(later, '2041-03-02T07:00:00Z')).isReleasable).toBe(true);
});
