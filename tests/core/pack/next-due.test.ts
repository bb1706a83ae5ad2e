import { expect, test } from 'vitest';
import { nextDue } from '../../../worker/core/pack/next-due.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { AT, assessed, posted } from './fixture.ts';

interface Putting {
  findings: { id: string; deferral?: { untilDate?: string; untilHours?: number } }[];
}

/** The demo visit with its deferred finding put off until something else. */
const SAY = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });

async function idsWhenDeferred(until: { untilDate?: string; untilHours?: number }): Promise<string[]> {
  const record = posted('nose-wheel-full') as unknown as Putting;
  for (const finding of record.findings) {
    if (!finding.deferral) continue;
    const { untilDate: _date, untilHours: _hours, ...deferral } = finding.deferral;
    finding.deferral = { ...deferral, ...until };
  }
  return nextDue({ ...(await assessed(record)), fmt: SAY }, AT).map(({ id }) => id);
}

test('nextDue() sorts deferred findings among the lines of the due list', async () => {
  expect((await idsWhenDeferred({ untilDate: '2026-12-01' }))[0]).toBe('F4');
  expect((await idsWhenDeferred({ untilDate: '2027-10-30', untilHours: 1300 })).indexOf('F4')).toBeGreaterThan(0);
});

test('nextDue() expects hours from the use of the aircraft, where no date comes before', async () => {
  // 25 hours at the hours a year of the record come before the oil change, which has 50 left; 80 hours come after it.
  expect((await idsWhenDeferred({ untilHours: 1229.9 }))[0]).toBe('F4');
  expect((await idsWhenDeferred({ untilHours: 1284.9 }))[0]).not.toBe('F4');
});
