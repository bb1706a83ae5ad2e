import { describe, expect, test } from 'vitest';
import { carriedForward } from '../../../worker/core/pack/carry-forward.ts';
import { fixturesIn } from '../../read-fixture.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from './fixture.ts';

const FROM = { pack: 'Q-SLM-P7-1', date: '2026-11-05' };

/** The same aircraft, taken in again with nothing done to it. */
async function nextVisit(name: string) {
  const { visit, results } = await assessed(posted(name), RELEASABLE_AT[name]);
  const baseline = carriedForward(visit, results, FROM);
  const { workshop, people, aircraft, units, schemaVersion } = posted(name);
  const header = { arrivedAt: '2027-05-01T09:00:00+02:00', summary: 'Nothing was done' };
  const record = { schemaVersion, units, workshop, people, aircraft, baseline, visit: header };
  return { before: results, next: await assessed(record, '2027-05-02T09:00:00+02:00') };
}

describe('carriedForward()', () => {
  test('gives the reasons of this visit in the language of its record', async () => {
    const record = posted('nose-wheel-full') as { workshop: { language?: string } };
    record.workshop.language = 'de';
    const { visit, results } = await assessed(record, RELEASABLE_AT['nose-wheel-full']);
    const reasons = carriedForward(visit, results, FROM)?.history?.map(({ reason }) => reason) ?? [];
    expect(reasons.at(-1)).toBe('Gewogen');
    expect(reasons).toContain('Papiere berichtigt, wie vorgefunden');
  });

  test.each(fixturesIn('visits'))('after %s the next visit begins with exactly what this one left', async (name) => {
    const { before, next } = await nextVisit(name);
    const { schedule, change } = next.results;
    expect(schedule?.massKg).toBeCloseTo(before.schedule?.massKg ?? 0, 9);
    expect(schedule?.momentKgMm).toBeCloseTo(before.schedule?.momentKgMm ?? 0, 5);
    expect(change.after.map(({ id, serial }) => ({ id, serial }))).toEqual(
      before.change.after.map(({ id, serial }) => ({ id, serial })),
    );
    expect(schedule?.history.length).toBe(before.schedule?.history.length);
    const codes = next.findings.map(({ code }) => code);
    expect(codes).not.toContain('SERIAL_DIFFERS_FROM_BASELINE');
    expect(codes).not.toContain('BASELINE_NOT_LAST_PACK');
  });
});
