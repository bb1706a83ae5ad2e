import fc from 'fast-check';
import { expect, test } from 'vitest';
import { launchesLeft } from '../../../../worker/core/calc/lives/launches-left.ts';
import { RUNS } from '../../../property-runs.ts';

test('launchesLeft() is what counting launch after launch up to the limit finds', () => {
  const parts = fc.record({
    allowedActuations: fc.integer({ min: 1, max: 3000 }),
    doneActuations: fc.integer({ min: 0, max: 3000 }),
    actuationsPerLaunch: fc.integer({ min: 1, max: 12 }),
  });
  fc.assert(
    fc.property(parts, (part) => {
      let [launches, done] = [0, part.doneActuations];
      for (; done + part.actuationsPerLaunch <= part.allowedActuations; launches++) done += part.actuationsPerLaunch;
      if (part.doneActuations <= part.allowedActuations) expect(launchesLeft(part)).toBe(launches);
      else expect(launchesLeft(part)).toBeLessThan(0);
    }),
    RUNS,
  );
});
