import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';
import { isBaggagePlace, isSeat, loadStationsOf } from '../../../../worker/core/calc/loading/load-space.ts';
import { groupProposals } from '../../../../worker/core/calc/loading/proposal.ts';
import { RUNS } from '../../../property-runs.ts';
import { type Loadable, loadables } from './random-aircraft.ts';
import { vertexExtremes } from './vertex-oracle.ts';

/** Two arms that hold at every mass, so that all loadings are inside if the extremes of brute force are. */
interface Band {
  forwardMm: number;
  aftMm: number;
}

const bands = fc
  .record({ forwardMm: fc.integer({ min: 150, max: 500 }), widthMm: fc.integer({ min: 60, max: 400 }) })
  .map(({ forwardMm, widthMm }): Band => ({ forwardMm, aftMm: forwardMm + widthMm }));

function envelopeWithin({ forwardMm, aftMm }: Band) {
  const envelope = envelopeOf(
    [
      { armMm: forwardMm, massKg: 1 },
      { armMm: forwardMm, massKg: 2000 },
      { armMm: aftMm, massKg: 2000 },
      { armMm: aftMm, massKg: 1 },
    ],
    'end-of-drawing',
  );
  if (!envelope) throw new Error('the corners bound an area');
  return envelope;
}

/** How far every loading stays inside, once a limit is entered in the record; undefined if the limit leaves none. */
function insideBy(
  { aircraft, empty }: Loadable,
  band: Band,
  stations: string[],
  maximumMassKg: number,
): number | undefined {
  const limit = { id: 'entered', text: 'Entered', stations, maximumMassKg };
  const limited = { ...aircraft, loadingLimits: [...(aircraft.loadingLimits ?? []), limit] };
  const extremes = vertexExtremes({ aircraft: limited, empty }, 1);
  return extremes && Math.min(extremes.forwardMm - band.forwardMm, band.aftMm - extremes.aftMm);
}

const proposalsOf = ({ aircraft, empty }: Loadable, band: Band) =>
  groupProposals(aircraft, { empty, leastPilotKg: 55 }, envelopeWithin(band));

describe('groupProposals()', () => {
  test('each limit brings every permitted loading inside, and a hundredth more does not', () => {
    let proposed = 0;
    fc.assert(
      fc.property(loadables({ fixed: 1, tabled: 0 }), bands, (loadable, band) => {
        const unlimited = insideBy(loadable, band, [], 0);
        // Only an aircraft that leaves the envelope is given proposals.
        fc.pre(unlimited !== undefined && unlimited < -1e-3);
        for (const { stations, maximumKg } of proposalsOf(loadable, band)) {
          proposed += 1;
          expect(insideBy(loadable, band, stations, maximumKg)).toBeGreaterThanOrEqual(-1e-6);
          const more = insideBy(loadable, band, stations, maximumKg * 1.01 + 0.01);
          expect(more).toBeLessThan(0);
        }
      }),
      { ...RUNS, numRuns: 150 },
    );
    expect(proposed).toBeGreaterThan(20);
  });

  test('leaves out no group that would do by being empty, or as light as the pilot', () => {
    fc.assert(
      fc.property(loadables({ fixed: 1, tabled: 0 }), bands, (loadable, band) => {
        const unlimited = insideBy(loadable, band, [], 0);
        fc.pre(unlimited !== undefined && unlimited < -1e-3);
        const places = loadStationsOf(loadable.aircraft);
        const groups = [places.filter(isBaggagePlace), places.filter(isSeat), places, ...places.map((each) => [each])];
        const proposed = proposalsOf(loadable, band).map(({ stations }) => [...stations].sort().join());
        for (const group of groups) {
          const leastKg = group.reduce((sum, { minimumMassKg = 0 }) => sum + minimumMassKg, 0);
          const stations = group.map(({ id }) => id);
          const would = insideBy(loadable, band, stations, leastKg);
          if (group.length > 0 && would !== undefined && Math.abs(would) > 1e-3)
            expect(proposed.includes([...stations].sort().join())).toBe(would > 0);
        }
      }),
      RUNS,
    );
  });

  test('come with the widest limit first', () => {
    fc.assert(
      fc.property(loadables({ fixed: 1, tabled: 0 }), bands, (loadable, band) => {
        const masses = proposalsOf(loadable, band).map(({ maximumKg }) => maximumKg);
        expect(masses).toEqual(masses.toSorted((a, b) => b - a));
      }),
      RUNS,
    );
  });
});
