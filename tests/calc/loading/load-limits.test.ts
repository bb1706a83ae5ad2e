import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastPilot } from '../../../worker/calc/loading/least-pilot.ts';
import { loadLimitsOf } from '../../../worker/calc/loading/load-limits.ts';
import type { Aircraft } from '../../../worker/visit/visit.ts';
import { RUNS } from '../../property-runs.ts';
import { readVisit } from '../read-visit.ts';
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

  test('holds the aircraft without fuel to its landing mass, and says what has to be burnt', () => {
    const { fullTanksPayload, leastBurnKg } = of({ maximumLandingMassKg: 530 });
    expect(fullTanksPayload).toEqual({ kg: expect.closeTo(204.1, 9), governedBy: 'landing-mass' });
    // 325.9 + 204.1 + 56.16 − 530
    expect(leastBurnKg).toBeCloseTo(56.16, 9);
    const binding = of({ maximumLandingMassKg: 570 });
    expect(binding.fullTanksPayload.governedBy).toBe('maximum-mass');
    expect(binding.leastBurnKg).toBeCloseTo(30, 9);
    expect(of({ maximumLandingMassKg: 600 }).leastBurnKg).toBe(0);
    expect(of({}).leastBurnKg).toBe(0);
  });

  test('agrees with brute force over every corner', () => {
    fc.assert(
      fc.property(loadables({ fixed: 2, tabled: 0 }), ({ aircraft, empty }) => {
        const { envelope: _envelope, ...bare } = aircraft;
        // The least pilot is a floor and no ceiling: left out, so that the oracle too looks from above alone.
        const stations = bare.stations.map((station) => ({ ...station, minimumMassKg: 0 })) as Aircraft['stations'];
        const { fullTanksPayload, usefulLoad } = loadLimitsOf({ ...bare, stations }, empty.massKg);
        const { fullTanksKg, togetherKg } = vertexMost({ aircraft: { ...bare, stations }, empty });
        expect(fullTanksPayload.kg < 0).toBe(fullTanksKg === undefined);
        if (fullTanksKg !== undefined) expect(fullTanksPayload.kg).toBeCloseTo(fullTanksKg, 6);
        if (togetherKg !== undefined) expect(usefulLoad.kg).toBeCloseTo(togetherKg, 6);
      }),
      RUNS,
    );
  });
});

describe('leastPilot()', () => {
  test('is what the aircraft states, or more by the envelope, or the custom where it states nothing', () => {
    expect(leastPilot(DEMO, 30, 60)).toEqual({ station: 'left-seat', kg: 55, governedBy: 'placard' });
    expect(leastPilot(DEMO, 62.5, 60)).toEqual({ station: 'left-seat', kg: 62.5, governedBy: 'envelope' });
    expect(leastPilot(DEMO, 'nobody', 60)).toEqual({ station: 'left-seat', kg: undefined, governedBy: 'envelope' });
    const unstated = DEMO.stations.map((station) => ({ ...station, minimumMassKg: undefined })) as Aircraft['stations'];
    expect(leastPilot({ ...DEMO, stations: unstated }, undefined, 60)).toEqual({
      station: 'left-seat',
      kg: 60,
      governedBy: 'custom',
    });
    expect(leastPilot({ ...DEMO, stations: [] }, undefined, 60)).toBeUndefined();
  });
});
