import { expect, test } from 'vitest';
import { nextDue } from '../../../worker/core/pack/next-due.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { AT, assessed, posted } from './fixture.ts';

interface Putting {
  findings: { id: string; deferral?: { untilDate?: string; untilHours?: number }; lookAgain?: unknown }[];
}

/** The demo visit with its deferred finding put off until something else, and no limit of its monitored one. */
const SAY = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });

async function idsWhenDeferred(until: { untilDate?: string; untilHours?: number }): Promise<string[]> {
  const record = posted('nose-wheel-full') as unknown as Putting;
  for (const finding of record.findings) {
    delete finding.lookAgain;
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

test('nextDue() lists a monitored finding with a limit, with its kind, its clocks and their meters', async () => {
  const due = nextDue({ ...(await assessed(posted('nose-wheel-full'))), fmt: SAY }, AT);
  const kinds = new Map(due.map(({ id, kind }) => [id, kind]));
  expect(['F6', 'F4', 'L02', 'D2-SB-016'].map((id) => kinds.get(id))).toEqual(['watch', 'deferral', 'due', 'bulletin']);
  expect(due.find(({ id }) => id === 'F6')?.limit.replaceAll('\u00a0', ' ')).toBe(
    '31 May 2027 or 1229.5 h, engine or 2400 landings',
  );
});
