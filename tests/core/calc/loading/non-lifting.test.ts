import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dryMaximumKg,
  mostPilotByNonLifting,
  waterAllowedKg,
} from '../../../../worker/core/calc/loading/non-lifting.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

const PARTS = [
  { massKg: 131, standardKg: 0.2 },
  { massKg: 6.3, standardKg: 0.1 },
  { massKg: 4, standardKg: 0.5 },
];

const kg = fc.integer({ min: 0, max: 300 });

describe('mostPilotByNonLifting()', () => {
  test('fills the limit with all that counts', () => {
    fc.assert(
      fc.property(kg, fc.array(kg, { maxLength: 5 }), (limitKg, masses) => {
        const { massKg } = mostPilotByNonLifting(
          limitKg,
          masses.map((each) => ({ massKg: each })),
        );
        expect(masses.reduce((sum, each) => sum + each, massKg)).toBe(limitKg);
      }),
      RUNS,
    );
  });

  test('has the uncertainty that a Monte Carlo of the parts finds', () => {
    const trials = trialsOf(
      (draw) =>
        mostPilotByNonLifting(
          250,
          PARTS.map(({ massKg, standardKg }) => ({ massKg: massKg + draw.normal(standardKg) })),
        ).massKg,
    );
    expectSpread(trials, mostPilotByNonLifting(250, PARTS).standardKg);
  });
});

test('with the cockpit at its limit, dry maximum mass and water make the maximum mass', () => {
  fc.assert(
    fc.property(kg, kg, kg, (wingsKg, fuselageKg, finKg) => {
      const maximumNonLiftingKg = fuselageKg + 120;
      const dryKg = dryMaximumKg({ maximumNonLiftingKg, wingsKg });
      const [emptyKg, cockpitKg] = [wingsKg + fuselageKg, 120];
      const waterKg = waterAllowedKg({ maximumKg: 1000, emptyKg, cockpitKg, finKg });
      expect(dryKg).toBe(emptyKg + cockpitKg);
      expect(dryKg + finKg + waterKg).toBe(1000);
      const limited = dryMaximumKg({ maximumNonLiftingKg, wingsKg, limitKg: 400 });
      expect(limited).toBe(Math.min(dryKg, 400));
    }),
    RUNS,
  );
});
