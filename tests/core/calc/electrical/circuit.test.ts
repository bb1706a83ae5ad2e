import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  altitudeFactor,
  ampacityOf,
  deratedA,
  hotAmpacityA,
} from '../../../../worker/core/calc/electrical/ampacity.ts';
import { circuitResult } from '../../../../worker/core/calc/electrical/circuit.ts';
import { greatestProtectionA } from '../../../../worker/core/calc/electrical/protection-table.ts';
import {
  dropV,
  longestRunAtTemperature,
  resistanceRatio,
} from '../../../../worker/core/calc/electrical/voltage-drop.ts';
import { ohmPerM, tableBundleWires, WIRE_TABLE, wireSize } from '../../../../worker/core/calc/electrical/wire-table.ts';
import type { Circuit, Electrical, Load } from '../../../../worker/core/record/visit.ts';
import { GAUGES, type Gauge } from '../../../../worker/core/record/wire-size.ts';
import { RUNS } from '../../../property-runs.ts';

const CIRCUIT: Circuit = {
  id: 'C',
  name: 'C',
  gauge: '20',
  temperatureRating: '150',
  runM: 3,
  ambientC: 50,
  bundleWires: 10,
  bundleLoadPercent: 20,
};
const load = (id: string, more: Partial<Load>): Load => ({
  id,
  name: id,
  change: 'kept',
  duty: 'continuous',
  isEssential: false,
  bus: 'B',
  ...more,
});
const system = (loads: Load[]): Electrical => ({
  system: '14-volt',
  altitudeFt: 10_000,
  sources: [{ id: 'S', name: 'S', ratedA: 20 }],
  buses: [{ id: 'B', name: 'B', isAliveOnBattery: true }],
  loads,
  circuits: [CIRCUIT],
});
const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });
const RATING = { freeAirA: 20, bundleFactor: 0.6, from: 'chart' };

describe('dropV()', () => {
  test('is linear in length and in current', () =>
    fc.assert(
      fc.property(positive(0.1), positive(50), positive(100), positive(10), (ohm, runM, currentA, times) => {
        const once = dropV({ ohmPerM: ohm, runM, currentA, conductorC: 60 });
        expect(dropV({ ohmPerM: ohm, runM: runM * times, currentA, conductorC: 60 }) / (once * times)).toBeCloseTo(
          1,
          9,
        );
        expect(dropV({ ohmPerM: ohm, runM, currentA: currentA * times, conductorC: 60 }) / (once * times)).toBeCloseTo(
          1,
          9,
        );
      }),
      RUNS,
    ));

  test('gives a cold wire no credit', () => expect(resistanceRatio(-40)).toBe(1));

  test('reaches its limit at the longest run of the hot wire', () =>
    fc.assert(
      fc.property(positive(0.1), positive(50), fc.double({ min: 20, max: 200, noNaN: true }), (ohm, currentA, hotC) => {
        const longestM = longestRunAtTemperature(0.5 / (ohm * currentA), hotC);
        expect(dropV({ ohmPerM: ohm, runM: longestM, currentA, conductorC: hotC })).toBeCloseTo(0.5, 9);
      }),
      RUNS,
    ));
});

describe('deratedA()', () => {
  test('never rises with altitude or with a fuller bundle', () =>
    fc.assert(
      fc.property(positive(20_000), positive(20_000), positive(1), positive(1), (a, b, p, q) => {
        const at = (altitudeFt: number, bundleFactor: number) =>
          deratedA({ ...RATING, bundleFactor }, altitudeFt) ?? -1;
        expect(at(Math.max(a, b), 1)).toBeLessThanOrEqual(at(Math.min(a, b), 1));
        expect(at(a, Math.min(p, q))).toBeLessThanOrEqual(at(a, Math.max(p, q)));
      }),
      RUNS,
    ));

  test('is not known above the altitude that was read, unless the record states the factor', () => {
    expect(altitudeFactor(20_001)).toBeUndefined();
    expect(deratedA(RATING, 30_000)).toBeUndefined();
    expect(deratedA({ ...RATING, altitudeFactor: 0.85 }, 30_000)).toBeCloseTo(10.2, 9);
  });
});

describe('ampacityOf()', () => {
  test('takes the table within its note alone', () => {
    const of = (more: Partial<Circuit>) => ampacityOf({ ...CIRCUIT, ...more }, 10_000)?.currentA;
    expect(of({})).toBe(7);
    expect(of({ bundleWires: 33 })).toBe(7);
    expect(of({ bundleWires: 34 })).toBeUndefined();
    expect(of({ bundleLoadPercent: 21 })).toBeUndefined();
    expect(of({ bundleLoadPercent: 100, bundleWires: 1 })).toBe(7);
    expect(of({ gauge: '8', bundleWires: 10 })).toBeUndefined();
    expect(of({ gauge: '26' })).toBeUndefined();
  });

  test('reduces the table in hotter surroundings, from its own figure to nothing', () => {
    const rated = fc.constantFrom('105' as const, '150' as const, '200' as const);
    const gauges = fc.constantFrom(...GAUGES.filter((gauge) => WIRE_TABLE[gauge]));
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(gauges, rated, share, share, (gauge, temperatureRating, a, b) => {
        const at = (ambientC: number): number => {
          const wire = { ...CIRCUIT, gauge, temperatureRating, ambientC, bundleWires: 1 };
          return ampacityOf(wire, 10_000)?.currentA ?? Number.NaN;
        };
        const ambient = (of: number): number => 70 + of * (Number(temperatureRating) - 70);
        const table = WIRE_TABLE[gauge]?.ampacityA[temperatureRating] ?? Number.NaN;
        expect(at(70)).toBe(table);
        expect(at(70.000_001)).toBeCloseTo(table, 3);
        expect(at(Number(temperatureRating))).toBe(0);
        expect(at(ambient(Math.max(a, b)))).toBeLessThanOrEqual(at(ambient(Math.min(a, b))) + 1e-9);
      }),
      RUNS,
    );
  });

  test('agrees in hotter surroundings with the column of the table that has the same rise', () => {
    for (const gauge of GAUGES) {
      const row = WIRE_TABLE[gauge];
      if (!row) continue;
      // A wire for 150 °C at 115 °C rises by 35 °C, as one for 105 °C at 70 °C does; likewise the others.
      for (const [rating, ambientC, same] of [
        ['150', 115, '105'],
        ['200', 165, '105'],
        ['200', 120, '150'],
      ] as const) {
        const [found, table] = [hotAmpacityA(row, rating, ambientC), row.ampacityA[same]];
        expect(found, `${gauge} ${rating}`).toBeLessThanOrEqual(table + 1e-9);
        // Small sizes are rounded to an ampere or a half.
        expect(table - found, `${gauge} ${rating}`).toBeLessThanOrEqual(Math.max(0.75, 0.04 * table));
      }
    }
  });

  test('a thicker wire of the table carries more and resists less', () => {
    const rows = GAUGES.flatMap((gauge) => WIRE_TABLE[gauge] ?? []);
    for (const [index, row] of rows.entries()) {
      const next = rows[index + 1];
      if (!next) continue;
      expect(next.ohmPer1000Ft).toBeLessThan(row.ohmPer1000Ft);
      for (const rating of ['105', '150', '200'] as const)
        expect(next.ampacityA[rating]).toBeGreaterThan(row.ampacityA[rating]);
    }
  });
});

describe('copperGauge()', () => {
  test('aluminium carries less and resists more than copper of its size, and has no row where the note gives none', () => {
    const aluminium = (gauge: Gauge) => wireSize({ gauge, material: 'aluminium' });
    expect(aluminium('8')).toEqual(WIRE_TABLE['10']);
    for (const gauge of ['10', '1', '26'] as const) expect(aluminium(gauge)).toBeUndefined();
    for (const gauge of GAUGES) {
      const [own, copper] = [aluminium(gauge), wireSize({ gauge })];
      if (!own || !copper) continue;
      expect(own.ampacityA['105']).toBeLessThan(copper.ampacityA['105']);
      expect(own.ohmPer1000Ft).toBeGreaterThan(copper.ohmPer1000Ft);
    }
  });

  test('the bundle is that of the copper wire', () => {
    expect(tableBundleWires({ gauge: '8', material: 'aluminium' })).toBe(33);
    expect(tableBundleWires({ gauge: '6', material: 'aluminium' })).toBe(9);
  });
});

describe('greatestProtectionA()', () => {
  test('has no breaker where the chart has none, and the record comes first', () => {
    // AC 43.13-1B table 11-3.
    for (const gauge of ['1', '0'] as const) {
      expect(greatestProtectionA({ gauge }, { kind: 'breaker', ratingA: 20 })).toBeUndefined();
      expect(greatestProtectionA({ gauge }, { kind: 'fuse', ratingA: 20 })).toEqual({ limitA: 150, from: 'table' });
    }
    expect(greatestProtectionA({ gauge: '12' }, { kind: 'breaker', ratingA: 20, limitA: 25 })?.limitA).toBe(25);
    expect(greatestProtectionA({ gauge: '24' }, { kind: 'fuse', ratingA: 2 })).toBeUndefined();
    expect(greatestProtectionA({ gauge: '4', material: 'aluminium' }, { kind: 'fuse', ratingA: 2 })).toBeUndefined();
  });
});

describe('circuitResult()', () => {
  test('adds the loads of a bus that it feeds, and leaves out what was removed', () => {
    const loads = [
      load('one', { circuit: 'C', amps: { cruise: 1 } }),
      load('two', { bus: 'A', watts: { cruise: 28, sourceFailed: 24 } }),
      load('gone', { circuit: 'C', change: 'removed', amps: { cruise: 9 } }),
    ];
    expect(circuitResult(CIRCUIT, system(loads)).continuousA).toBe(1);
    expect(circuitResult({ ...CIRCUIT, feedsBus: 'A' }, system(loads)).continuousA).toBe(3);
  });

  test('holds the peak to the intermittent limit, each drop at the heat of its own current', () => {
    const loads = [
      load('on', { circuit: 'C', amps: { cruise: 1.75 } }),
      load('send', { circuit: 'C', duty: 'intermittent', amps: { cruise: 2 } }),
    ];
    const result = circuitResult(CIRCUIT, system(loads));
    // T2 = 50 + 100 · √(1.75 / 7) = 100 °C
    expect(result.conductorC).toBeCloseTo(100, 9);
    const ohm = (ohmPerM({ gauge: '20' }) ?? Number.NaN) * 3 * (334.5 / 254.5);
    expect(result.continuousDrop?.dropV).toBeCloseTo(1.75 * ohm, 9);
    const peakC = 50 + 100 * Math.sqrt(3.75 / 7);
    expect(result.peakDrop).toEqual({
      currentA: 3.75,
      conductorC: expect.closeTo(peakC, 9),
      dropV: expect.closeTo((3.75 * ohm * (234.5 + peakC)) / 334.5, 9),
      limitV: 1,
    });
  });

  test('has no continuous drop where nothing draws current without end, as at a starter', () => {
    const start = load('start', { circuit: 'C', duty: 'intermittent', amps: { start: 110 } });
    const result = circuitResult({ ...CIRCUIT, gauge: '4', bundleWires: 1, runM: 1.6 }, system([start]));
    expect(result.continuousDrop).toBeUndefined();
    expect(result.peakDrop?.currentA).toBe(110);
    // AC 43.13-1B table 11-9, No. 4 at 150 °C: 0.28 Ω per 1000 ft, 103 A. Hotter than it is made for, by 11-66, from memory: T2 = 50 + 100 · √(110 / 103).
    const hotC = 50 + 100 * Math.sqrt(110 / 103);
    expect(result.longestRunM).toBeCloseTo(1 / ((0.28 / 304.8) * 110 * ((234.5 + hotC) / 254.5)), 9);
  });

  test('allows the shorter of the two longest runs', () => {
    const loads = [
      load('on', { circuit: 'C', amps: { cruise: 1 } }),
      load('send', { circuit: 'C', duty: 'intermittent', amps: { cruise: 5 } }),
    ];
    const { longestRunM = 0 } = circuitResult(CIRCUIT, system(loads));
    const there = circuitResult({ ...CIRCUIT, runM: longestRunM }, system(loads));
    expect(there.peakDrop?.dropV).toBeCloseTo(1, 9);
    expect(there.continuousDrop?.dropV).toBeLessThan(0.5);
  });

  test('heats aluminium by its own figures and holds its protection to what it carries', () => {
    const protection = { kind: 'breaker', ratingA: 20 } as const;
    const circuit: Circuit = { ...CIRCUIT, gauge: '8', material: 'aluminium', protection };
    const result = circuitResult(circuit, system([load('on', { circuit: 'C', amps: { cruise: 6.5 } })]));
    // T2 = 50 + 100 · √(6.5 / 26) = 100 °C
    expect(result.continuousDrop?.dropV).toBeCloseTo((1.26 / 304.8) * 3 * 6.5 * (338.1 / 258.1), 9);
    expect(result.protectionLimit).toEqual({ limitA: 26, from: 'ampacity' });
  });

  test('holds a main feeder to 2 % at the rating of its source, whatever hangs on it', () => {
    const circuit: Circuit = { ...CIRCUIT, gauge: '8', bundleWires: 1, mainFeeder: { kind: 'source', source: 'S' } };
    const result = circuitResult(circuit, system([load('on', { circuit: 'C', amps: { cruise: 1 } })]));
    // AC 43.13-1B table 11-9, No. 8 at 150 °C: 57 A; 11-66, from memory.
    const conductorC = 50 + 100 * Math.sqrt(20 / 57);
    expect(result.continuousA).toBe(20);
    expect(result.continuousDrop).toEqual({
      currentA: 20,
      conductorC: expect.closeTo(conductorC, 9),
      dropV: expect.closeTo((0.7 / 304.8) * 3 * 20 * ((234.5 + conductorC) / 254.5), 9),
      limitV: expect.closeTo(0.28, 9),
    });
    expect(result.measuredLimitV).toBeCloseTo(0.28, 9);
  });

  test('holds the feeder of a battery to its five-minute rate, which is no load without end', () => {
    const circuit: Circuit = { ...CIRCUIT, gauge: '4', mainFeeder: { kind: 'battery', fiveMinuteA: 60 } };
    const send = load('send', { circuit: 'C', duty: 'intermittent', amps: { cruise: 9 } });
    const result = circuitResult(circuit, system([load('on', { circuit: 'C', amps: { cruise: 3 } }), send]));
    expect(result.continuousA).toBe(3);
    expect(result.continuousDrop?.currentA).toBe(60);
    expect(result.peakDrop).toBeUndefined();
  });

  test('carries the start and the charge through the feeder of a battery', () => {
    const circuit: Circuit = {
      ...CIRCUIT,
      gauge: '4',
      bundleWires: 1,
      mainFeeder: { kind: 'battery', fiveMinuteA: 60 },
    };
    const loads = [
      load('starter', { circuit: 'X', duty: 'intermittent', amps: { start: 110 } }),
      load('on', { bus: 'B', amps: { start: 1.9, cruise: 3 } }),
      load('gone', { change: 'removed', amps: { start: 50 } }),
    ];
    const battery = { capacityAh: 18, usableFactor: 0.75, recogniseMin: 5, landingMin: 10, charging: { taxi: 6 } };
    const result = circuitResult(circuit, { ...system(loads), battery });
    expect([result.continuousA, result.peakA]).toEqual([6, 111.9]);
    // AC 43.13-1B table 11-9, No. 4 at 150 °C: 0.28 Ω per 1000 ft, 103 A; 11-66, from memory.
    const hotC = 50 + 100 * Math.sqrt(111.9 / 103);
    expect(result.startDrop).toEqual({
      currentA: 111.9,
      conductorC: expect.closeTo(hotC, 9),
      dropV: expect.closeTo((0.28 / 304.8) * 3 * 111.9 * ((234.5 + hotC) / 254.5), 9),
    });
    expect(
      circuitResult({ ...circuit, mainFeeder: { kind: 'source', source: 'S' } }, system(loads)).startDrop,
    ).toBeUndefined();
  });

  test('a longest run is where the drop reaches its limit', () => {
    const circuit: Circuit = { ...CIRCUIT, gauge: '8', bundleWires: 1, mainFeeder: { kind: 'source', source: 'S' } };
    const { longestRunM = 0 } = circuitResult(circuit, system([]));
    const longest = circuitResult({ ...circuit, runM: longestRunM }, system([])).continuousDrop;
    expect(longest?.dropV).toBeCloseTo(0.28, 9);
  });

  test('takes a wire of unknown capacity to be as hot as it may become', () => {
    const result = circuitResult(
      { ...CIRCUIT, bundleWires: 40 },
      system([load('on', { circuit: 'C', amps: { taxi: 1 } })]),
    );
    expect(result.ampacity).toBeUndefined();
    expect(result.conductorC).toBe(150);
  });
});
