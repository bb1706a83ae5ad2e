import { atArm, total } from '../../worker/core/calc/mass/mass-moment.ts';
import { COVERAGE_FACTOR, combine } from '../../worker/core/calc/weighing/uncertainty.ts';
import { reduceWeighing } from '../../worker/core/calc/weighing/weighing.ts';
import { inputOf } from './case-of.ts';
import { demoWeighing } from './demo.ts';
import type { Formula } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

const combined: Formula = {
  id: 'combined-uncertainty-of-mass',
  title: 'Combined standard uncertainty of a mass',
  tex: ['u(m) = \\sqrt{\\sum_i (c_i \\cdot u_i)^2}'],
  symbols: [
    ['u(m)', 'standard uncertainty of the mass', 'kg'],
    ['c_i', 'how strongly the mass follows each source; 1 for a mass that adds', ''],
    ['u_i', 'standard uncertainty of each source', 'kg'],
  ],
  by: [combine],
  holds: 'For sources that do not depend on each other, to first order.',
  example() {
    const { standards } = inputOf<{ standards: number[] }>('GU-04');
    const source = { source: 'Case', quantity: 'mass', massSensitivity: 1, momentSensitivity: 0 } as const;
    const { massKg } = combine(
      standards.map((standard) => ({ ...source, standard })),
      1,
      0,
    );
    const ones = standards.map(() => 1);
    return {
      case: 'GU-04',
      given: { ...numbered('u', standards, 'nm'), ...numbered('c', ones, '') },
      steps: [
        sum(`u(m) = \\sqrt{${summed(standards.length, (i) => `(c_${i} \\cdot u_${i})^2`)}}`, massKg, 'nm', 'standard'),
      ],
    };
  },
};

const arm: Formula = {
  id: 'combined-uncertainty-of-arm',
  title: 'Combined standard uncertainty of the centre of gravity',
  tex: ['u(x) = \\sqrt{\\sum_i \\left( \\frac{C_i - x \\cdot c_i}{m} \\cdot u_i \\right)^2}'],
  symbols: [
    ['u(x)', 'standard uncertainty of the centre of gravity', 'mm'],
    ['C_i', 'how strongly the moment follows each source; its arm for a mass, its mass for an arm', ''],
    ['c_i', 'how strongly the mass follows it; 1 for a mass, 0 for an arm', ''],
    ['u_i', 'standard uncertainty of each source', ''],
    ['x', 'arm of the centre of gravity', 'mm'],
    ['m', 'mass', 'kg'],
  ],
  by: [combine],
  holds: 'For sources that do not depend on each other, to first order, with x = M / m.',
  example() {
    const points = [atArm(240, 1982), atArm(86, 722)];
    const whole = total(points);
    const x = whole.momentKgMm / whole.massKg;
    const of = (standard: number, armMm: number) =>
      ({ source: 'Point', quantity: 'mass', standard, massSensitivity: 1, momentSensitivity: armMm }) as const;
    const { armMm } = combine([of(0.12, 1982), of(0.09, 722)], whole.massKg, x);
    const term = (i: number): string => `\\left( \\frac{C_${i} - x \\cdot c_${i}}{m} \\cdot u_${i} \\right)^2`;
    return {
      given: {
        ...numbered('u', [0.12, 0.09], 'kg'),
        ...numbered('C', [1982, 722], 'mm'),
        ...numbered('c', [1, 1], ''),
        m: [whole.massKg, 'kg'],
        x: [x, 'mm'],
      },
      steps: [sum(`u(x) = \\sqrt{${summed(2, term)}}`, armMm, 'mm')],
    };
  },
};

const expanded: Formula = {
  id: 'expanded-uncertainty',
  title: 'Expanded uncertainty',
  tex: ['U = k \\cdot u'],
  symbols: [
    ['U', 'expanded uncertainty, as a pack prints it', ''],
    ['k', 'coverage factor, always 2: about 95 %', ''],
    ['u', 'combined standard uncertainty', ''],
  ],
  by: [reduceWeighing],
  holds: 'About 95 % where many sources of like size come together, which a weighing has.',
  example() {
    const { standard, expanded: whole } = demoWeighing().result;
    return {
      given: { k: [COVERAGE_FACTOR, ''], u: [standard.massKg, 'kg'] },
      steps: [sum('U = k \\cdot u', whole.massKg, 'kg')],
    };
  },
};

export const combining: readonly Formula[] = [combined, arm, expanded];
