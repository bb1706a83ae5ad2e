import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dueList } from '../../../../worker/core/calc/lives/due.ts';
import { productTimes } from '../../../../worker/core/calc/lives/product-time.ts';
import { openAfter } from '../../../../worker/core/calc/open-items/carry-over.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');
const AT = '2026-11-05T14:20:00+01:00';

type Engine = NonNullable<Visit['aircraft']['engine']>;
type Fitted = NonNullable<Engine['fitted']>;

const withEngine = (more: Partial<Engine>, visit: Visit = FULL): Visit => ({
  ...visit,
  aircraft: { ...visit.aircraft, engine: { ...(visit.aircraft.engine as Engine), ...more } },
});

/** The demo visit with its engine meter at some hours. */
function read(hours: number, fitted: Fitted): Visit {
  const readings = (FULL.meters?.readings ?? []).map((meter) =>
    meter.of === 'engine' ? { ...meter, inHours: hours, outHours: hours } : meter,
  );
  return withEngine({ fitted }, { ...FULL, meters: { ...FULL.meters, readings } as Visit['meters'] } as Visit);
}

describe('productTimes()', () => {
  test('runs with the meter from the fitting on, whatever the meter had counted before', () => {
    const hours = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(hours, hours, hours, hours, (at, had, overhauled, flown) => {
        const fitted = { on: '2020-01-01', at: { hours: at }, sinceNew: { hours: had } };
        const visit = read(at + flown, { ...fitted, sinceOverhaul: { hours: overhauled } });
        const [clock] = productTimes(visit)[0]?.clocks ?? [];
        expect(clock?.sinceNew).toBeCloseTo(had + flown, 9);
        expect(clock?.sinceOverhaul).toBeCloseTo(overhauled + flown, 9);
      }),
      RUNS,
    );
  });

  test('of a new product begins at nothing, and gives it none of the time of the one before', () => {
    const fitted = { on: '2026-11-04', meter: 'engine', at: { hours: 1204.5 }, sinceNew: { hours: 0 } };
    expect(productTimes(withEngine({ fitted }))[0]?.clocks).toMatchObject([
      { clock: 'hours', now: 1204.5, sinceNew: 0 },
    ]);
  });

  test('counts each of two batteries by its own counter', () => {
    const visit = readVisit('electric-aeroplane');
    const [first, second] = visit.meters?.counters ?? [];
    if (!(first && second)) throw new Error('two batteries have two counters');
    const counters = [{ ...first, out: 15 }, second];
    const times = productTimes({ ...visit, meters: { ...visit.meters, counters } as Visit['meters'] });
    const cycles = times
      .filter(({ kind }) => kind === 'battery')
      .map(({ serial, clocks }) => [serial, clocks[0]?.sinceNew]);
    expect(cycles).toEqual([
      ['BP-2201', 15],
      ['BP-2202', 3],
    ]);
    // The motor: 842.5 by its meter, less 402.1 when it was fitted.
    expect(times[0]?.clocks[0]?.sinceNew).toBeCloseTo(440.4, 9);
  });

  test('takes no other meter or counter for one that the visit did not read', () => {
    const fitted = { on: '2020-01-01', at: { hours: 0 }, sinceNew: { hours: 0 } };
    const [airframe] = FULL.meters?.readings ?? [];
    const meters = { ...FULL.meters, readings: [airframe] } as Visit['meters'];
    for (const meter of [undefined, 'engine'])
      expect(
        productTimes({ ...withEngine({ fitted: { ...fitted, meter } }), meters })[0]?.clocks[0]?.now,
      ).toBeUndefined();
    const electric = readVisit('electric-aeroplane');
    const [, second] = electric.meters?.counters ?? [];
    const one = { ...electric, meters: { ...electric.meters, counters: [second] } as Visit['meters'] };
    const batteries = productTimes(one).filter(({ kind }) => kind === 'battery');
    expect(batteries.map(({ clocks }) => clocks[0]?.now)).toEqual([undefined, 3]);
  });

  test('knows no time where nobody read the meter at the fitting', () => {
    const fitted = { on: '2020-01-01', at: {}, sinceNew: { hours: 12 } };
    expect(productTimes(withEngine({ fitted }))[0]?.clocks).toMatchObject([{ clock: 'hours', sinceNew: undefined }]);
  });
});

describe('dueList() of a line that names a product', () => {
  const overhaul = (hours: number) => ({
    ...{ id: 'L10', item: 'Engine overhaul', basis: 'life-limit' as const, product: { kind: 'engine' as const } },
    interval: { hours: 2000 },
    lastDone: { hours },
  });

  test('counts in the time of the product, and gives the limit as its meter will show it', () => {
    // A used engine: 1500 h since new when fitted at 1000 h of the meter; due at 2000 h since new, so 500 h later.
    const fitted = { on: '2026-01-01', at: { hours: 1000 }, sinceNew: { hours: 1500 } };
    const [due] = dueList(withEngine({ fitted }), { items: [overhaul(0)] }, AT);
    expect(due).toMatchObject({ of: 'engine', dueHours: 1500 });
    expect(due?.hoursLeft).toBeCloseTo(1500 - 1204.5, 9);
  });

  test('counts by the meter where the product states no time', () => {
    const [due] = dueList(withEngine({ fitted: undefined }), { items: [overhaul(100)] }, AT);
    expect(due).toMatchObject({ of: 'engine', dueHours: 2100 });
  });
});

describe('openAfter() of a product that was replaced', () => {
  const NOTHING = {
    findings: [],
    bulletins: undefined,
    modifications: [],
    release: undefined,
  } as unknown as Partial<Visit>;
  const line = {
    ...{ id: 'L10', item: 'Engine overhaul', basis: 'life-limit' as const, product: { kind: 'engine' as const } },
    interval: { hours: 2000 },
    lastDone: { hours: 0 },
  };
  const visit = (engine: Partial<Engine>): Visit =>
    withEngine(engine, { ...FULL, ...NOTHING, lives: { items: [line] } } as Visit);
  const fitted = (at: number): Fitted => ({
    on: '2026-11-04',
    meter: 'engine',
    at: { hours: at },
    sinceNew: { hours: 0 },
  });

  test('leaves the line of the old one open, next to that of the new one with its own limit', () => {
    const before = openAfter([], visit({ serial: 'OLD', fitted: fitted(0) }), { pack: 'Q-SLM-P1', at: AT });
    const after = openAfter(before, visit({ serial: 'NEW', fitted: fitted(1204.5) }), { pack: 'Q-SLM-P2', at: AT });
    expect(after.map(({ item, product, until }) => [item, product?.serial, until.hours])).toEqual([
      ['Q-SLM-P1/L10', 'OLD', 2000],
      ['Q-SLM-P2/L10', 'NEW', 3204.5],
    ]);
  });

  test('lets the answer of the visit close the line of the old one', () => {
    const before = openAfter([], visit({ serial: 'OLD', fitted: fitted(0) }), { pack: 'Q-SLM-P1', at: AT });
    const carried = [
      {
        item: 'Q-SLM-P1/L10',
        answer: 'closed' as const,
        by: 'jonas',
        at: AT,
        reason: 'Engine removed',
        evidence: 'M1',
      },
    ];
    const now = { ...visit({ serial: 'NEW', fitted: fitted(1204.5) }), carried };
    expect(openAfter(before, now, { pack: 'Q-SLM-P2', at: AT }).map(({ item }) => item)).toEqual(['Q-SLM-P2/L10']);
  });
});
