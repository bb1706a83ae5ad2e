import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { resolveRecord } from '../../../worker/core/record/resolve-record.ts';
import type { StandingFile } from '../../../worker/core/record/standing-file.ts';
import { states, takenOver } from '../../../worker/core/record/take-over.ts';
import { RUNS } from '../../property-runs.ts';
import { readFixture } from '../../read-fixture.ts';

type Json = Record<string, unknown>;

const FULL = readFixture('visits/nose-wheel-full') as Json & { people: { id: string }[] };
const { units, workshop, aircraft, certificates, baseline, lives, bulletins, meters, wiring, electrical } = FULL;

const FILE: StandingFile = {
  pack: 'Q-SLM-P1-1',
  sha256: 'a'.repeat(64),
  sections: { units, workshop, aircraft, certificates, baseline, lives, bulletins, meters, wiring, electrical },
  open: [],
  readings: {},
};

const visit = { arrivedAt: '2026-11-20T09:00:00+01:00', summary: 'Tyre replaced.' };
const SMALL = { schemaVersion: 4, standing: { pack: FILE.pack, sha256: FILE.sha256 }, visit };

describe('resolveRecord()', () => {
  test('returns a record without a reference as posted, whoever the workshop knows', () => {
    const people = FULL.people.map((person) => ({ ...person }));
    expect(resolveRecord(FULL, { standing: FILE, people }).whole).toBe(FULL);
    expect(resolveRecord(FULL, {}).whole).toBe(FULL);
  });

  test('adds the people that a record names, and nobody else', () => {
    const record = { ...SMALL, release: { by: 'jonas', statement: 'work-complete', scope: 'mila' } };
    const { whole } = resolveRecord(record, { standing: FILE, people: FULL.people });
    expect((whole as typeof FULL).people).toEqual(FULL.people.filter(({ id }) => id === 'jonas'));
  });

  test('keeps what the record does not state, and gives the rest whole', () => {
    const stated = { electrical: { altitudeFt: 8000 }, lives: { items: [{ id: 'L02', lastDone: { hours: 1209 } }] } };
    const whole = resolveRecord({ ...SMALL, ...stated }, { standing: FILE }).whole as Json;
    expect(whole.electrical).toEqual({ ...(electrical as Json), altitudeFt: 8000 });
    expect((whole.lives as { items: Json[] }).items).toMatchObject([{ id: 'L02', item: 'Oil and filter' }]);
    const { kept } = whole.standing as { kept: Record<string, { items?: { id: string }[] }> };
    expect(kept.wiring).toEqual(wiring);
    expect(kept).not.toHaveProperty('electrical');
    expect(kept.lives?.items?.map(({ id }) => id)).not.toContain('L02');
    expect((kept.lives?.items?.length ?? 0) + 1).toBe((lives as { items: unknown[] }).items.length);
  });

  test('takes nothing of the last time for an item that was done again', () => {
    const life = { id: 'L02', item: 'Oil', lastDone: { date: '2025-11-01', hours: 1150 }, wasDueAt: { hours: 1145 } };
    const bulletin = {
      id: 'SB-1',
      subject: 'Bolts',
      doneOn: '2025-11-01',
      nextDueDate: '2026-11-30',
      method: 'Option 1',
    };
    const file = {
      ...FILE,
      sections: { ...FILE.sections, lives: { items: [life] }, bulletins: { items: [bulletin] } },
    };
    const itemsOf = (section: 'lives' | 'bulletins', item: object) => {
      const whole = resolveRecord({ ...SMALL, [section]: { items: [item] } }, { standing: file }).whole as Json;
      return (whole[section] as { items: Json[] }).items;
    };
    expect(itemsOf('lives', { id: 'L02', lastDone: { hours: 1209 } })).toEqual([
      { id: 'L02', item: 'Oil', lastDone: { hours: 1209 } },
    ]);
    expect(itemsOf('lives', { id: 'L02', lastDone: { date: '2026-11-01', hours: 1150 } })).toEqual([
      { ...life, lastDone: { date: '2026-11-01', hours: 1150 } },
    ]);
    expect(itemsOf('lives', { id: 'L02', lastDone: { hours: 1150 } })).toEqual([life]);
    expect(itemsOf('lives', { id: 'L02', item: 'Oil and filter' })).toEqual([{ ...life, item: 'Oil and filter' }]);
    expect(itemsOf('bulletins', { id: 'SB-1', doneOn: '2026-11-20' })).toEqual([
      { id: 'SB-1', subject: 'Bolts', doneOn: '2026-11-20' },
    ]);
    expect(itemsOf('bulletins', { id: 'SB-1', nextDueDate: '2027-01-31' })).toEqual([
      { ...bulletin, nextDueDate: '2027-01-31' },
    ]);
  });

  test('drops what is no longer there, by names', () => {
    const without = ['/aircraft/propeller', '/aircraft/loadingLimits', '/lives/items/L02'];
    const { whole, issues } = resolveRecord({ ...SMALL, standing: { ...SMALL.standing, without } }, { standing: FILE });
    expect(issues).toEqual([]);
    expect((whole as { aircraft: Json }).aircraft).not.toHaveProperty('propeller');
    expect((whole as { aircraft: Json }).aircraft).not.toHaveProperty('loadingLimits');
    expect(JSON.stringify((whole as { standing: Json }).standing.kept)).not.toContain('"id":"L02"');
  });

  test('takes any JSON, and every issue points into what was posted', () => {
    const anything = fc.jsonValue({ maxDepth: 3 });
    const list = fc.oneof(anything, fc.array(fc.oneof(anything, fc.record({ id: anything, item: anything }))));
    const part = fc.oneof(anything, fc.record({ items: list, readings: list, stations: list, without: list }));
    const posted = fc.record(
      {
        schemaVersion: fc.constantFrom(1, 2, 3, 4, 9, 'x'),
        standing: fc.oneof(part, fc.record({ pack: anything, sha256: anything, without: list, kept: part })),
        aircraft: part,
        lives: part,
        meters: part,
        wiring: part,
        people: list,
        units: part,
        baseline: part,
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(posted, (record) => {
        for (const known of [{}, { standing: FILE }, { standing: FILE, people: FULL.people }]) {
          const read = readRecord(record, known);
          const pointers = read.ok ? [] : read.issues.map(({ pointer }) => pointer);
          expect(pointers.every((pointer) => pointer === '' || pointer.startsWith('/'))).toBe(true);
        }
      }),
      { ...RUNS, numRuns: 400 },
    );
  });
});

describe('takenOver()', () => {
  test('names the other file, and leaves out what it takes of it', () => {
    const record = { ...SMALL, aircraft: { stations: [{ id: 'baggage', maximumMass: 20 }], seats: 2 } };
    const newer = { pack: 'Q-SLM-P2-1', sha256: 'b'.repeat(64) };
    const taken = ['/aircraft/stations/baggage/maximumMass', '/aircraft/seats', '/aircraft/model'];
    expect(taken.map((part) => states(record, part))).toEqual([true, true, false]);
    const { record: next, notStated } = takenOver(record, newer, taken);
    expect(next).toEqual({ ...SMALL, standing: newer, aircraft: { stations: [{ id: 'baggage' }] } });
    expect(notStated).toEqual(['/aircraft/model']);
  });
});
