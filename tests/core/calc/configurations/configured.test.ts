import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aircraftInCategory, configuredAircraft } from '../../../../worker/core/calc/configurations/configured.ts';
import { envelopeIn } from '../../../../worker/core/calc/loading/aircraft-envelope.ts';
import { loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { RUNS } from '../../../property-runs.ts';
import { loadables } from '../loading/random-aircraft.ts';
import { vertexExtremes } from '../loading/vertex-oracle.ts';
import { readVisit } from '../read-visit.ts';

const { aircraft } = readVisit('computed-only');

const EQUATIONS = {
  forward: [{ fromMassKg: 280, toMassKg: 400, armMm: 300, atMassKg: 280 }],
  aft: [{ fromMassKg: 280, toMassKg: 400, armMm: 420, atMassKg: 280 }],
};

describe('configuredAircraft()', () => {
  const floats = { id: 'floats', name: 'On floats' };

  test('has the limits of the aircraft where the configuration states none', () => {
    const { configuration, ...rest } = configuredAircraft(aircraft, { ...floats, maximumMassKg: 430 });
    expect(configuration).toEqual(floats);
    expect(rest).toEqual({ ...aircraft, maximumMassKg: 430 });
  });

  test('never mixes the envelope of one with the equations or the lower edge of the other', () => {
    const open = { ...aircraft, envelopeLowerEdge: 'end-of-drawing' as const };
    const byEquations = configuredAircraft(open, { ...floats, envelopeEquations: EQUATIONS });
    expect(envelopeIn(byEquations)).toMatchObject({ lowestKg: 280, highestKg: 400, lowerEdge: 'limit' });
    const { envelope = [] } = aircraft;
    const byCorners = configuredAircraft({ ...byEquations, envelope: undefined }, { ...floats, envelope });
    expect(envelopeIn(byCorners)).toEqual(envelopeIn({ ...aircraft, envelope }));
  });
});

test('aircraftInCategory() has the extremes of an aircraft without the stations that stay empty', () => {
  const masks = fc.array(fc.boolean(), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(loadables({ fixed: 2, tabled: 0 }), masks, fc.integer({ min: 60, max: 300 }), (loadable, mask, kg) => {
      const { empty } = loadable;
      const others = loadable.aircraft.stations.filter(({ kind }) => kind !== 'pilot');
      const unusedStations = others.filter((_, index) => mask[index]).map(({ id }) => id);
      const category = {
        id: 'utility',
        name: 'Utility',
        maximumMassKg: empty.massKg + kg,
        envelope: [],
        unusedStations,
      };
      const ours = loadingExtremes(aircraftInCategory(loadable.aircraft, category), { empty, leastPilotKg: 55 });
      const bare = {
        ...loadable.aircraft,
        maximumMassKg: Math.min(loadable.aircraft.maximumMassKg, category.maximumMassKg),
        stations: loadable.aircraft.stations.filter(({ id }) => !unusedStations.includes(id)),
      };
      const oracle = vertexExtremes({ aircraft: bare, empty }, 1);
      expect(ours === undefined).toBe(oracle === undefined);
      if (!ours || !oracle) return;
      expect(Math.abs(ours.forward.armMm - oracle.forwardMm)).toBeLessThanOrEqual(1e-6);
      expect(Math.abs(ours.aft.armMm - oracle.aftMm)).toBeLessThanOrEqual(1e-6);
    }),
    { ...RUNS, numRuns: 60 },
  );
});
