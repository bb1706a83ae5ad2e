import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lateralMomentKgMm } from '../../../../worker/core/calc/mass/lateral-moment.ts';
import { RUNS } from '../../../property-runs.ts';

const items = fc.array(
  fc.record({ massKg: fc.integer({ min: -50, max: 200 }), lateralMm: fc.integer({ min: -3000, max: 3000 }) }),
);

describe('lateralMomentKgMm()', () => {
  test('changes its sign if every item goes to the other side, and doubles with the masses', () => {
    fc.assert(
      fc.property(items, (list) => {
        const moment = lateralMomentKgMm(list);
        const mirrored = list.map(({ massKg, lateralMm }) => ({ massKg, lateralMm: -lateralMm }));
        const doubled = list.map(({ massKg, lateralMm }) => ({ massKg: 2 * massKg, lateralMm }));
        expect(lateralMomentKgMm(mirrored) + moment).toBe(0);
        expect(lateralMomentKgMm(doubled)).toBe(2 * moment);
      }),
      RUNS,
    );
  });

  test('is positive for a mass that is missing on the left', () => {
    expect(lateralMomentKgMm([{ massKg: -3.1, lateralMm: -600 }])).toBeCloseTo(1860, 9);
  });
});
