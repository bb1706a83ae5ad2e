import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { energyEndurance, usableEnergy } from '../../../../worker/core/calc/energy/energy-store.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

const STORE = { nominalKwh: 22, health: 0.88, chargeAtStart: 0.97, chargeKept: 0.15, temperatureFactor: 0.92 };
const USE = { powerKw: 21, reserveKw: 18, reserveMin: 10 };

describe('usableEnergy()', () => {
  test('has the uncertainty of a Monte Carlo', () => {
    const standards = {
      nominalKwh: 0.2,
      health: 0.01,
      chargeAtStart: 0.01,
      chargeKept: 0.015,
      temperatureFactor: 0.02,
    };
    const trials = trialsOf(
      (draw) =>
        usableEnergy({
          nominalKwh: STORE.nominalKwh + draw.normal(standards.nominalKwh),
          health: STORE.health + draw.normal(standards.health),
          chargeAtStart: STORE.chargeAtStart + draw.normal(standards.chargeAtStart),
          chargeKept: STORE.chargeKept + draw.normal(standards.chargeKept),
          temperatureFactor: STORE.temperatureFactor + draw.normal(standards.temperatureFactor),
        }).kwh,
    );
    expectSpread(trials, usableEnergy(STORE, standards).standardKwh);
  });

  test('is all of a new battery from full to empty, and none at the charge that is kept', () => {
    const full = { nominalKwh: 22, health: 1, chargeAtStart: 1, chargeKept: 0 };
    expect(usableEnergy(full)).toEqual({ kwh: 22, standardKwh: 0 });
    expect(usableEnergy({ ...full, chargeAtStart: 0.3, chargeKept: 0.3 }).kwh).toBe(0);
    expect(usableEnergy({ ...full, chargeAtStart: 0.2, chargeKept: 0.3 }).kwh).toBeLessThan(0);
  });
});

describe('energyEndurance()', () => {
  test('ends where a discharge in small steps can still fly the reserve, and no longer', () => {
    const uses = fc.record({
      powerKw: fc.integer({ min: 10, max: 60 }),
      reserveKw: fc.integer({ min: 10, max: 40 }),
      reserveMin: fc.integer({ min: 0, max: 15 }),
    });
    fc.assert(
      fc.property(uses, (use) => {
        const energy = usableEnergy(STORE);
        const found = energyEndurance(energy, use);
        const wholeReserveMin = (kwh: number): number => (kwh / use.reserveKw) * 60;
        let [leftKwh, minutes] = [energy.kwh, 0];
        while (wholeReserveMin(leftKwh) > use.reserveMin) {
          leftKwh -= (use.powerKw * 0.005) / 60;
          minutes += 0.005;
        }
        if (minutes > 0) expect(Math.abs((found?.minutes ?? 0) - minutes)).toBeLessThan(0.006);
        else expect(found?.minutes).toBeLessThanOrEqual(0);
      }),
      { ...RUNS, numRuns: 50 },
    );
  });

  test('has the uncertainty of a Monte Carlo', () => {
    const energy = { kwh: 14, standardKwh: 0.4 };
    const use = { ...USE, standardPowerKw: 0.3, standardReserveKw: 0.8 };
    const trials = trialsOf(
      (draw) =>
        energyEndurance(
          { kwh: energy.kwh + draw.normal(0.4), standardKwh: 0 },
          { ...USE, powerKw: USE.powerKw + draw.normal(0.3), reserveKw: USE.reserveKw + draw.normal(0.8) },
        )?.minutes ?? Number.NaN,
    );
    expectSpread(trials, energyEndurance(energy, use)?.standardMin ?? 0);
  });

  test('is negative without the reserve, and unknown without power', () => {
    expect(energyEndurance({ kwh: 2, standardKwh: 0 }, USE)?.minutes).toBeLessThan(0);
    expect(energyEndurance({ kwh: 2, standardKwh: 0 }, { ...USE, powerKw: 0 })).toBeUndefined();
  });
});
