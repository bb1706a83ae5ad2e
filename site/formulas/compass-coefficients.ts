import { coefficientsOf, deviationAt } from '../../worker/core/calc/compass/coefficients.ts';
import { solve } from '../../worker/core/calc/compass/solve.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { numbered, said, sum, summed } from './steps.ts';

const POINTS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

/** Returns the eight deviations of a published swing, and the coefficients that the code computes. */
function published() {
  const { deviations } = inputOf<{ deviations: Record<string, number> }>('CD-08');
  const read = POINTS.map((point, index) => ({
    headingDeg: index * 45,
    deviationDeg: deviations[point] ?? Number.NaN,
  }));
  const found = coefficientsOf(read);
  if (!found) throw new Error('eight headings determine five coefficients');
  return { read, found };
}

const fit: Formula = {
  id: 'coefficients',
  title: 'Coefficients A to E by least squares',
  tex: [
    '\\sum_i (d_i - A - B \\cdot \\sin \\theta_i - C \\cdot \\cos \\theta_i - D \\cdot \\sin 2 \\theta_i - E \\cdot \\cos 2 \\theta_i)^2 \\rightarrow \\min',
  ],
  symbols: [
    ['A', 'constant deviation', '°'],
    ['B', 'semicircular, as the sine', '°'],
    ['C', 'semicircular, as the cosine', '°'],
    ['D', 'quadrantal, as the sine', '°'],
    ['E', 'quadrantal, as the cosine', '°'],
    ['d_i', 'deviation that was read', '°'],
    ['\\theta_i', 'magnetic heading at which it was read', '°'],
  ],
  by: [coefficientsOf, solve],
  holds:
    'All five from six headings on that are 20° apart and leave no gap over 90°; else A, B and C alone, and none where a gap is over 120°. The code solves the normal equations for any headings. For eight headings 45° apart they come down to the sums of the example.',
  example() {
    const { read, found } = published();
    const wave = (kind: string, times: 1 | 2): string =>
      summed(read.length, (i) => `d_${i} \\cdot \\${kind}(${times === 2 ? '2 \\cdot ' : ''}\\theta_${i}^{\\circ})`);
    return {
      case: 'CD-08',
      given: {
        ...numbered(
          'd',
          read.map(({ deviationDeg }) => deviationDeg),
          '°',
        ),
        ...numbered(
          '\\theta',
          read.map(({ headingDeg }) => headingDeg),
          '°',
        ),
      },
      steps: [
        sum(`A = \\frac{1}{8} \\cdot (${summed(read.length, (i) => `d_${i}`)})`, found.A, '°', 'A'),
        sum(`B = \\frac{1}{4} \\cdot (${wave('sin', 1)})`, found.B, '°', 'B'),
        sum(`C = \\frac{1}{4} \\cdot (${wave('cos', 1)})`, found.C, '°', 'C'),
        sum(`D = \\frac{1}{4} \\cdot (${wave('sin', 2)})`, found.D, '°', 'D'),
        sum(`E = \\frac{1}{4} \\cdot (${wave('cos', 2)})`, found.E, '°', 'E'),
      ],
    };
  },
};

const MODEL =
  '\\delta = A + B \\cdot \\sin \\theta + C \\cdot \\cos \\theta + D \\cdot \\sin 2 \\theta + E \\cdot \\cos 2 \\theta';

const model: Formula = {
  id: 'deviation-by-the-model',
  title: 'Deviation by the coefficients, and residual',
  tex: [MODEL, 'r = d - \\delta'],
  symbols: [
    ['\\delta', 'deviation that the coefficients give', '°'],
    ['A', 'constant deviation', '°'],
    ['B', 'semicircular, as the sine', '°'],
    ['C', 'semicircular, as the cosine', '°'],
    ['D', 'quadrantal, as the sine', '°'],
    ['E', 'quadrantal, as the cosine', '°'],
    ['\\theta', 'magnetic heading', '°'],
    ['d', 'deviation that was read', '°'],
    ['r', 'residual', '°'],
  ],
  by: [deviationAt],
  holds: 'A large residual is a reading to be taken again; what is large is a rule of the gate.',
  example() {
    const { read, found } = published();
    const [, reading] = read;
    const [theta, d] = [reading?.headingDeg ?? Number.NaN, reading?.deviationDeg ?? Number.NaN];
    const delta = deviationAt(found, theta);
    const { A, B, C, D, E } = found;
    const worked =
      '\\delta = A + B \\cdot \\sin(\\theta^{\\circ}) + C \\cdot \\cos(\\theta^{\\circ}) + D \\cdot \\sin(2 \\cdot \\theta^{\\circ}) + E \\cdot \\cos(2 \\cdot \\theta^{\\circ})';
    return {
      case: 'CD-08',
      given: {
        A: [A, '°'],
        B: [B, '°'],
        C: [C, '°'],
        D: [D, '°'],
        E: [E, '°'],
        '\\theta': [theta, '°'],
        d: [d, '°'],
      },
      steps: [
        sum(worked, delta, '°'),
        sum('r = d - \\delta', d - delta, '°'),
        said('The case prints the residual with the sign turned.', { residualNE: delta - d }),
      ],
    };
  },
};

export const coefficients: readonly Formula[] = [fit, model];
