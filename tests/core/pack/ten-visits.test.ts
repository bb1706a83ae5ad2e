import { describe, expect, test } from 'vitest';
import {
  type Assessed,
  assess,
  NO_READINGS,
  nextRecord,
  openAfterPack,
  type Past,
  standingAfter,
} from '../../../worker/core/core.ts';
import type { StandingFile } from '../../../worker/core/record/standing-file.ts';
import { addMonths } from '../../../worker/core/units/calendar.ts';
import { factorOf } from '../../../worker/core/units/quantity.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import { readFixture } from '../../read-fixture.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';

// Ten visits of one aircraft, each from the standing file of the one before, as a workshop would send them. What must
// come out is counted here by another route: sums over the changes from the first schedule on, and dates and hours
// from the last time that each item was done.

interface Item {
  id: string;
  mass: number;
  arm: number;
}

interface Life {
  id: string;
  item: string;
  interval: { hours?: number; months?: number };
  lastDone: { date?: string; hours?: number };
}

interface Whole {
  units: { mass: 'kg' | 'lb'; arm: 'mm' | 'cm' | 'in'; volume: 'l' | 'usgal' };
  aircraft: { registration: string };
  visit: { arrivedAt: string };
  meters?: {
    readings: { id: string; of: string; outHours: number; offsetHours?: number }[];
    counters?: { id: string; out: number }[];
    landings?: number;
  };
  lives?: { items: Life[] };
  release?: { by: string; statement: string };
  people: { id: string }[];
}

/** Pack after a visit: what the archive would hand to the next one. */
interface After {
  assessed: Assessed;
  past: Past;
  file: StandingFile;
}

const packOf = (registration: string, number: number): string => `${registration}-P${number}-1`;

async function sealed(record: unknown, at: string, before: After | undefined, number: number): Promise<After> {
  const { open, readings } = before?.past ?? { open: [], readings: NO_READINGS };
  const facts = { attachments: FIXTURE_FILES.facts, open, readings, ...(before && { standing: before.file }) };
  const outcome = await assess(record, at, facts);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  const { assessed } = outcome;
  // Only the sealed text goes on.
  const text = JSON.parse(assessed.recordJson) as unknown;
  const pack = packOf(assessed.record.aircraft.registration, number);
  const seal = { pack, issuedAt: at, recordSha256: assessed.recordSha256, isWithdrawn: false };
  const past = openAfterPack({ open, readings }, text, seal);
  const again = await assess(text, at);
  if (!again.ok) throw new Error('Cannot go on: the sealed record must be whole');
  const file = standingAfter(again.assessed, { pack, sha256: assessed.recordSha256, date: at.slice(0, 10) }, past);
  return { assessed, past, file };
}

const day = (start: string, days: number): string =>
  new Date(Date.parse(start) + days * 86_400_000).toISOString().slice(0, 10);

/** Item that a visit installs: of another mass and place every time. */
const installedAt = (visit: number, { arm }: { arm: number }): Item => ({
  id: `N${visit}`,
  mass: 0.31 + 0.07 * visit,
  arm: arm * (0.9 + 0.02 * visit),
});

describe.each(Object.keys(RELEASABLE_AT).filter((name) => !['weighing-only'].includes(name)))(
  'ten visits from the standing file: %s',
  (name) => {
    test('lose nothing, type nothing twice, and add up', async () => {
      const first = readFixture(`visits/${name}`) as Whole;
      const at = RELEASABLE_AT[name] ?? '';
      let after = await sealed(first, at, undefined, 1);
      const afterFirst = after.file;
      const schedule = after.assessed.results.schedule;
      if (!schedule) throw new Error('Cannot sum up: the first visit must leave an empty mass');
      const factor = { mass: factorOf('mass', first.units), arm: factorOf('arm', first.units) };
      let massKg = schedule.massKg;
      let momentKgMm = schedule.momentKgMm;
      const fitted = new Map(after.assessed.results.change.after.map(({ id, massKg: of }) => [id, of]));
      const openAtFirst = after.past.open.map(({ item }) => item);
      const life = first.lives?.items.find(({ interval, lastDone }) => interval.months && lastDone.date);
      let done = life?.lastDone;
      const by = first.people[0]?.id ?? '';

      for (let visit = 2; visit <= 10; visit++) {
        const date = day(at, 7 * visit);
        const noon = (hour: string): string => `${date}T${hour}:00:00Z`;
        const { record } = nextRecord(after.file, noon('08'));
        const fresh = installedAt(visit, { arm: schedule.armMm / factor.arm });
        const old = `N${visit - 1}`;
        const takesOut = visit % 3 === 0 && fitted.has(old);
        const changes = [
          { kind: 'installed', ...fresh, name: `Item of visit ${visit}` },
          ...(takesOut ? [{ kind: 'removed', item: old, fate: 'owner' }] : []),
        ];
        const small = {
          ...record,
          visit: { arrivedAt: noon('08'), workEndedAt: noon('10'), summary: `Visit ${visit}.` },
          modifications: [
            {
              ...{ id: `M${visit}`, title: `Change ${visit}`, classification: 'minor', description: 'As listed.' },
              ...{ finishedAt: noon('09'), by: [by], changes },
            },
          ],
          ...(life && visit === 5 && { lives: { items: [{ id: life.id, lastDone: { ...life.lastDone, date } }] } }),
          ...(first.meters && { meters: metersAt(first.meters, visit) }),
          people: first.people,
        };
        if (life && visit === 5) done = { ...life.lastDone, date };
        const takenOutKg = fitted.get(old) ?? 0;
        after = await sealed(small, noon('11'), after, visit);

        massKg += fresh.mass * factor.mass;
        momentKgMm += fresh.mass * factor.mass * fresh.arm * factor.arm;
        fitted.set(fresh.id, fresh.mass * factor.mass);
        if (takesOut) {
          massKg -= takenOutKg;
          momentKgMm -= takenOutKg * installedAt(visit - 1, { arm: schedule.armMm / factor.arm }).arm * factor.arm;
          fitted.delete(old);
        }
        expect(Object.keys(small).sort()).not.toContain('aircraft');
      }

      const { results, record } = after.assessed;
      expect(results.schedule?.massKg).toBeCloseTo(massKg, 9);
      expect(results.schedule?.momentKgMm).toBeCloseTo(momentKgMm, 5);
      expect(new Set(results.change.after.map(({ id }) => id))).toEqual(new Set(fitted.keys()));
      expect(record.aircraft).toEqual(after.file.sections.aircraft);
      expect(record.aircraft).toEqual((readFixture(`visits/${name}`) as Whole).aircraft);
      // Nothing that was open is lost, and nothing has two names.
      expect(after.past.open.map(({ item }) => item).sort()).toEqual([...openAtFirst].sort());
      for (const section of ['wiring', 'electrical', 'antennas', 'surveillance', 'bulletins', 'meters'] as const)
        expect(after.file.sections[section], section).toEqual(afterFirst.sections[section]);
      const livesNow = (after.file.sections.lives as Whole['lives'])?.items ?? [];
      expect(livesNow).toHaveLength(first.lives?.items.length ?? 0);
      for (const each of first.lives?.items ?? [])
        expect(livesNow).toContainEqual(each.id === life?.id ? { ...each, lastDone: done } : each);
      if (life && done?.date !== undefined) {
        const open = after.past.open.find(({ id, kind }) => id === life.id && kind === 'due');
        expect(open?.until.date?.slice(0, 7)).toBe(addMonths(done.date, life.interval.months ?? 0).slice(0, 7));
      }
      for (const { id, of, outHours, offsetHours = 0 } of first.meters?.readings ?? [])
        expect(after.past.readings.meters.find((meter) => meter.id === id && meter.of === of)?.hours).toBeCloseTo(
          outHours + offsetHours + 10,
          9,
        );
      // The history has every step from the first schedule on.
      const changed = results.schedule?.history.filter(({ cause }) => JSON.stringify(cause).includes('Change '));
      expect(changed).toHaveLength(9);
    });
  },
);

/** Meters as read at a visit: one hour more each time. */
const metersAt = ({ readings, counters, landings }: NonNullable<Whole['meters']>, visit: number) => ({
  readings: readings.map(({ id, outHours }) => ({ id, inHours: outHours + visit, outHours: outHours + visit })),
  ...(counters && { counters: counters.map(({ id, out }) => ({ id, in: out + visit, out: out + visit })) }),
  ...(landings !== undefined && { landings: landings + visit }),
});
