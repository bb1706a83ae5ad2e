import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastPilot } from '../../../../worker/core/calc/loading/least-pilot.ts';
import { loadLimitsOf } from '../../../../worker/core/calc/loading/load-limits.ts';
import type { Aircraft } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';
import { crossingLoadables } from './crossing-aircraft.ts';
import { loadables } from './random-aircraft.ts';
import { vertexMost } from './vertex-oracle.ts';

const { aircraft: DEMO } = readVisit('nose-wheel-full');
const EMPTY_KG = 325.9;
const of = (changes: Partial<Aircraft>) => loadLimitsOf({ ...DEMO, ...changes }, EMPTY_KG);
const without = (): Aircraft => {
  const { envelope: _envelope, maximumZeroFuelMassKg: _zeroFuel, loadingLimits: _limits, ...aircraft } = DEMO;
  return aircraft;
};

describe('loadLimitsOf()', () => {
  // By hand, of 600 kg at most, 325.9 kg empty, 78 l of 0.72 kg/l = 56.16 kg, two seats of 110 kg and 25 kg of baggage.
  test('names the limit that is met first, and takes the least of all', () => {
    expect(of({}).fullTanksPayload).toEqual({ kg: expect.closeTo(217.94, 9), governedBy: 'maximum-mass' });
    expect(of({}).usefulLoad).toEqual({ kg: expect.closeTo(274.1, 9), governedBy: 'maximum-mass' });
    const zeroFuel = of({ maximumZeroFuelMassKg: 480 });
    expect(zeroFuel.fullTanksPayload).toEqual({ kg: expect.closeTo(154.1, 9), governedBy: 'zero-fuel-mass' });
    expect(zeroFuel.usefulLoad).toEqual({ kg: expect.closeTo(210.26, 9), governedBy: 'zero-fuel-mass' });
    expect(of({ maximumMassKg: 700, envelope: undefined }).fullTanksPayload).toEqual({
      kg: 225,
      governedBy: 'joint-limits',
    });
    expect(loadLimitsOf({ ...without(), maximumMassKg: 700 }, EMPTY_KG).fullTanksPayload).toEqual({
      kg: 245,
      governedBy: 'places',
    });
    expect(of({ maximumMassKg: 700 }).fullTanksPayload.governedBy).toBe('envelope');
  });

  test('holds the aircraft with full tanks to its landing mass, and says what may take off beyond', () => {
    const binding = of({ maximumLandingMassKg: 570 });
    // 570 − 325.9 − 56.16, and without the fuel 570 − 325.9; to take off with 600 kg 30 kg of the 56.16 kg have to be burnt.
    expect(binding.fullTanksPayload).toEqual({ kg: expect.closeTo(187.94, 9), governedBy: 'landing-mass' });
    expect(binding.usefulLoad).toEqual({ kg: expect.closeTo(244.1, 9), governedBy: 'landing-mass' });
    expect(binding.leastBurnKg).toBe(0);
    expect(binding.afterBurn).toEqual({
      payloadKg: expect.closeTo(217.94, 9),
      burnKg: expect.closeTo(30, 9),
      leftKg: expect.closeTo(26.16, 9),
    });
    expect(of({ maximumLandingMassKg: 600 }).afterBurn).toBeUndefined();
    expect(of({}).leastBurnKg).toBe(0);
  });

  test('names no payload that can only be landed dry, and none below nothing', () => {
    // 600 − 530 kg is more than the 56.16 kg of fuel, 600 − 543.84 kg all of it.
    for (const maximumLandingMassKg of [530, 600 - 78 * 0.72]) {
      const dry = of({ maximumLandingMassKg });
      expect(dry.fullTanksPayload.kg).toBeCloseTo(maximumLandingMassKg - 325.9 - 56.16, 9);
      expect(dry.afterBurn).toBeUndefined();
    }
    const heavy = of({ maximumLandingMassKg: 370 });
    expect(heavy.fullTanksPayload).toEqual({ kg: expect.closeTo(-12.06, 9), governedBy: 'landing-mass' });
    expect(heavy.leastBurnKg).toBeCloseTo(12.06, 9);
  });

  test('a landing mass never lets more take off, and the aircraft may land at once with what it lets', () => {
    fc.assert(
      fc.property(fc.double({ min: 300, max: 650, noNaN: true }), (maximumLandingMassKg) => {
        const { fullTanksPayload, usefulLoad, fullFuelKg } = of({ maximumLandingMassKg });
        expect(fullTanksPayload.kg).toBeLessThanOrEqual(of({}).fullTanksPayload.kg);
        expect(EMPTY_KG + fullTanksPayload.kg + fullFuelKg).toBeLessThanOrEqual(maximumLandingMassKg + 1e-9);
        expect(EMPTY_KG + usefulLoad.kg).toBeLessThanOrEqual(maximumLandingMassKg + 1e-9);
      }),
      RUNS,
    );
  });

  test.each([
    { what: 'limits within each other', aircraftOf: loadables({ fixed: 2, tabled: 0 }), numRuns: 100 },
    { what: 'limits that cross or have a condition', aircraftOf: crossingLoadables(), numRuns: 60 },
  ])('agrees with brute force over every corner, with $what', ({ aircraftOf, numRuns }) => {
    fc.assert(
      fc.property(aircraftOf, ({ aircraft: drawn, empty }) => {
        // A load outside beyond the maximum mass is no payload, and a minimum flying mass no ceiling.
        const { maximumMassWithExternalLoadKg: _external, minimumMassKg: _minimum, ...aircraft } = drawn;
        const { envelope: _envelope, ...bare } = aircraft;
        // The least pilot is a floor and no ceiling: left out, so that the oracle too looks from above alone.
        const stations = bare.stations.map((station) => ({ ...station, minimumMassKg: 0 })) as Aircraft['stations'];
        const { fullTanksPayload, usefulLoad } = loadLimitsOf({ ...bare, stations }, empty.massKg);
        // To land at once is to take off below the landing mass.
        const { maximumLandingMassKg = Number.POSITIVE_INFINITY } = bare;
        const maximumMassKg = Math.min(bare.maximumMassKg, maximumLandingMassKg);
        const { fullTanksKg, togetherKg } = vertexMost({ aircraft: { ...bare, stations, maximumMassKg }, empty });
        expect(fullTanksPayload.kg < 0).toBe(fullTanksKg === undefined);
        if (fullTanksKg !== undefined) expect(fullTanksPayload.kg).toBeCloseTo(fullTanksKg, 6);
        if (togetherKg !== undefined) expect(usefulLoad.kg).toBeCloseTo(togetherKg, 6);
      }),
      { ...RUNS, numRuns },
    );
  });
});

const OF = { customKg: 60, emptyKg: 300 };

describe('leastPilot()', () => {
  test('brings the aircraft to its minimum flying mass without usable fuel', () => {
    const light = { ...DEMO, minimumMassKg: 372 };
    expect(leastPilot(light, 62.5, OF)).toEqual({ station: 'left-seat', kg: 72, governedBy: 'minimum-mass' });
    expect(leastPilot({ ...light, minimumMassKg: 350 }, 62.5, OF)?.governedBy).toBe('envelope');
  });

  test('is what the aircraft states, or more by the envelope, or the custom where it states nothing', () => {
    expect(leastPilot(DEMO, 30, OF)).toEqual({ station: 'left-seat', kg: 55, governedBy: 'placard' });
    expect(leastPilot(DEMO, 62.5, OF)).toEqual({ station: 'left-seat', kg: 62.5, governedBy: 'envelope' });
    expect(leastPilot(DEMO, 'nobody', OF)).toEqual({ station: 'left-seat', kg: undefined, governedBy: 'envelope' });
    const unstated = DEMO.stations.map((station) => ({ ...station, minimumMassKg: undefined })) as Aircraft['stations'];
    expect(leastPilot({ ...DEMO, stations: unstated }, undefined, OF)).toEqual({
      station: 'left-seat',
      kg: 60,
      governedBy: 'custom',
    });
    expect(leastPilot({ ...DEMO, stations: [] }, undefined, OF)).toBeUndefined();
  });
});
