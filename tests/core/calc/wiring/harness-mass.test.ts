import { expect, test } from 'vitest';
import { gramPerM, harnessMass } from '../../../../worker/core/calc/wiring/harness-mass.ts';
import type { Wire } from '../../../../worker/core/record/visit.ts';

const wire = (more: Partial<Wire>): Wire => ({
  from: { at: 'A' },
  to: { at: 'B' },
  change: 'added',
  gauge: '22',
  lengthM: 10,
  shield: 'none',
  ...more,
});

test('gramPerM() is copper with the allowances', () => {
  // 22 AWG: 0.3255 mm² · 8.96 g/cm³ = 2.917 g/m of copper
  expect(gramPerM({ gauge: '22' }, false)).toBeCloseTo(2.917 * 1.4, 2);
  expect(gramPerM({ gauge: '22' }, true)).toBeCloseTo(2.917 * 2.2, 2);
  // 0000 AWG: 107.2 mm²
  expect(gramPerM({ gauge: '0000' }, false)).toBeCloseTo(107.22 * 8.96 * 1.4, 0);
});

test('gramPerM() of aluminium is lighter by the metal alone', () => {
  // 8 AWG: 8.366 mm² · (8.96 − 2.70) g/cm³ = 52.4 g/m
  const lighter = gramPerM({ gauge: '8' }, true) - gramPerM({ gauge: '8', material: 'aluminium' }, true);
  expect(lighter).toBeCloseTo(52.37, 1);
});

test('harnessMass() keeps what is added, removed and found apart, and weighs the arm by mass', () => {
  const { added, removed } = harnessMass({
    connectors: [],
    points: [],
    wires: [
      wire({ gramPerM: 10, armMm: 1000 }),
      wire({ gramPerM: 30, armMm: 2000 }),
      wire({ gramPerM: 5 }),
      wire({ gramPerM: 20, change: 'kept' }),
      wire({ gramPerM: 7, change: 'removed', armMm: 500 }),
    ],
    found: [
      { id: 'X1', from: 'a', to: 'b', identifiedBy: 'continuity', decision: 'removed', gauge: '22', lengthM: 2 },
      { id: 'X2', from: 'a', to: 'b', identifiedBy: 'continuity', decision: 'capped', gauge: '22', lengthM: 2 },
    ],
  });
  expect(added).toEqual({ lengthM: 30, massKg: expect.closeTo(0.45, 9), armMm: expect.closeTo(1750, 9) });
  expect(removed.massKg).toBeCloseTo(0.07 + (2 * gramPerM({ gauge: '22' }, false)) / 1000, 9);
  expect(removed.armMm).toBeCloseTo(500, 9);
});
