import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patched } from '../../../json-patch.ts';
import { RUNS } from '../../../property-runs.ts';
import { readFixture } from '../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../assess-record.ts';

type Patch = Parameters<typeof patched>[1];

/** A finding of one rule on a changed record of the full visit; undefined where it is silent. */
function sentenceOf(code: string, patch: Patch): string | undefined {
  const record = patched(readFixture('visits/nose-wheel-full'), patch);
  const { findings } = assessRecord(record, RELEASABLE_AT['nose-wheel-full'] ?? '');
  return findings.find((finding) => finding.code === code)?.sentence;
}

const replaced = (path: string, value: unknown): Patch[number] => ({ op: 'replace', path, value });

/** A part with an hour limit that binds, on a meter that reads so many hours. */
function lifeOf(lastDone: number, interval: number, now: number, toleranceHours?: number): Patch {
  const basis = toleranceHours === undefined ? 'life-limit' : 'programme';
  const item = {
    id: 'L99',
    item: 'Fuel hoses',
    basis,
    interval: { hours: interval },
    lastDone: { hours: lastDone },
    ...(toleranceHours !== undefined && { toleranceHours }),
  };
  return [
    replaced('/lives', { items: [item] }),
    replaced('/meters/readings/0/inHours', now),
    replaced('/meters/readings/0/outHours', now),
  ];
}

describe('a limit met exactly is met', () => {
  test('by hours on the meter, whatever tenths they are', () => {
    // Known pairs of which the binary sum falls short: 2240.7 + 123.6 = 2364.2999999999997.
    for (const [done, interval, now] of [
      [2240.7, 123.6, 2364.3],
      [1100.4, 100.7, 1201.1],
    ] as const)
      expect(sentenceOf('LIFE_EXCEEDED', lifeOf(done, interval, now)), `${done} + ${interval}`).toBeUndefined();
    const some = fc.integer({ min: 1, max: 20_000 });
    fc.assert(
      fc.property(some, some, (done, interval) => {
        const now = (done + interval) / 10;
        expect(sentenceOf('LIFE_EXCEEDED', lifeOf(done / 10, interval / 10, now))).toBeUndefined();
        expect(sentenceOf('LIFE_EXCEEDED', lifeOf(done / 10, interval / 10, now + 0.1))).toBeDefined();
      }),
      { ...RUNS, numRuns: 25 },
    );
  });

  test('by hours at the end of their tolerance', () => {
    expect(sentenceOf('LIFE_EXCEEDED', lifeOf(404.7, 100, 514.7, 10))).toBeUndefined();
    expect(sentenceOf('LIFE_EXCEEDED', lifeOf(404.7, 100, 514.8, 10))).toBeDefined();
  });

  test('by hours that a finding was put off to, on a meter that counts on from an earlier one', () => {
    expect(127.4 + 203.8).toBeGreaterThan(331.2);
    const read = (untilHours: number): Patch => [
      { op: 'add', path: '/meters/readings/0/offsetHours', value: 203.8 },
      replaced('/meters/readings/0/inHours', 127.4),
      replaced('/meters/readings/0/outHours', 127.4),
      replaced('/findings/3/deferral/untilHours', untilHours),
    ];
    expect(sentenceOf('DEFERRAL_EXPIRED', read(331.2))).toBeUndefined();
    expect(sentenceOf('DEFERRAL_EXPIRED', read(331.1))).toMatch(/0\.1 h past 331\.1 h/);
  });

  test('by the loads of a wire: 0.2 + 2.2 + 0.6 A on one that carries 3 A', () => {
    const load = (id: string, amps: number) => ({
      id,
      name: id,
      change: 'kept',
      duty: 'continuous',
      isEssential: false,
      bus: 'main',
      circuit: 'C-ENG',
      amps: { cruise: amps },
    });
    // AC 43.13-1B table 11-9, read: 22 AWG of 105 °C carries 3 A.
    const onWire = (last: number): Patch => [
      replaced('/electrical/loads', [load('A', 0.2), load('B', 2.2), load('C', last)]),
      ...['gauge', 'temperatureRating'].map((field, index) =>
        replaced(`/electrical/circuits/${circuitIndex('C-ENG')}/${field}`, index === 0 ? '22' : '105'),
      ),
    ];
    expect(0.2 + 2.2 + 0.6).toBeGreaterThan(3);
    expect(sentenceOf('WIRE_OVERLOADED', onWire(0.6))).toBeUndefined();
    expect(sentenceOf('WIRE_OVERLOADED', onWire(0.601))).toMatch(/3\.001 A .* rated 3\.000 A/);
  });

  test('by what the sources give: 0.1 + 16.1 + 3.8 A of 20 A', () => {
    const load = (id: string, amps: number) => ({
      id,
      name: id,
      change: 'kept',
      duty: 'continuous',
      isEssential: false,
      bus: 'main',
      amps: { takeOff: amps },
    });
    const onSource = (last: number): Patch => [
      replaced('/electrical/battery/charging', {}),
      replaced('/electrical/loads', [load('A', 0.1), load('B', 16.1), load('C', last)]),
    ];
    expect(0.1 + 16.1 + 3.8).toBeGreaterThan(20);
    expect(sentenceOf('SOURCE_OVERLOADED', onSource(3.8))).toBeUndefined();
    expect(sentenceOf('SOURCE_OVERLOADED', onSource(3.81))).toMatch(/20\.01 A; the sources give 20\.00 A/);
  });

  test('by an empty centre of gravity on the end of its range', () => {
    const { results } = assessRecord(readFixture('visits/nose-wheel-full'), RELEASABLE_AT['nose-wheel-full'] ?? '');
    const armMm = results.schedule?.armMm ?? 0;
    const from = (forward: number): Patch => [replaced('/aircraft/emptyRange/forward', forward)];
    // As a decimal of fifteen digits, which is all that a record can say.
    expect(sentenceOf('EMPTY_CG_OUTSIDE_RANGE', from(armMm * (1 + 4e-16)))).toBeUndefined();
    expect(sentenceOf('EMPTY_CG_OUTSIDE_RANGE', from(armMm + 0.01))).toMatch(
      /1650\.34\u00a0mm, is outside 1650\.35\u00a0mm to 1700\u00a0mm/,
    );
  });
});

function circuitIndex(id: string): number {
  const { electrical } = readFixture('visits/nose-wheel-full') as { electrical: { circuits: { id: string }[] } };
  return electrical.circuits.findIndex((circuit) => circuit.id === id);
}
