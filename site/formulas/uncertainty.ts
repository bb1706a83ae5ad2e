import { meanOf, rectangular, resolution, standardErrorOfMean } from '../../worker/core/calc/weighing/uncertainty.ts';
import { weighingBudget } from '../../worker/core/calc/weighing/weighing-budget.ts';
import { inputOf } from './case-of.ts';
import { combining } from './combined-uncertainty.ts';
import { DEMO, demoWeighing } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

const LIMIT = 'u = \\frac{a}{\\sqrt{3}}';

const limit: Formula = {
  id: 'uncertainty-of-a-limit',
  title: 'Standard uncertainty of a limit of error',
  tex: [LIMIT],
  symbols: [
    ['u', 'standard uncertainty', ''],
    ['a', 'limit: the value is known to lie within ± a', ''],
  ],
  by: [rectangular],
  holds:
    'Every value within the limit is taken as equally likely: scales by their certificate, arms as measured, masses as stated.',
  example() {
    const { limit: a } = inputOf<{ limit: number }>('GU-05b');
    return { case: 'GU-05b', given: { a: [a, ''] }, steps: [sum(LIMIT, rectangular(a), '', 'standard')] };
  },
};

const RESOLUTION = 'u = \\frac{d}{\\sqrt{12}}';

const ofDisplay: Formula = {
  id: 'uncertainty-of-a-display',
  title: 'Standard uncertainty of a display',
  tex: [RESOLUTION],
  symbols: [
    ['u', 'standard uncertainty of one reading', 'kg'],
    ['d', 'step of the display', 'kg'],
  ],
  by: [resolution],
  holds: 'For a steady reading. It is a limit of half a step to either side.',
  example: () => ({ given: { d: [0.1, 'kg'] }, steps: [sum(RESOLUTION, resolution(0.1), 'kg')] }),
};

const MEAN = 'u = \\sqrt{\\frac{\\sum_i (q_i - \\bar{q})^2}{n \\cdot (n - 1)}}';

const scatter: Formula = {
  id: 'uncertainty-of-a-mean',
  title: 'Standard uncertainty of the mean of several runs',
  tex: ['\\bar{q} = \\frac{1}{n} \\cdot \\sum_i q_i', MEAN],
  symbols: [
    ['u', 'standard uncertainty of the mean', 'kg'],
    ['q_i', 'each reading', 'kg'],
    ['\\bar{q}', 'mean of the readings', 'kg'],
    ['n', 'number of readings', ''],
  ],
  by: [meanOf, standardErrorOfMean],
  holds: 'From two readings on; a single reading says nothing of its own scatter and counts as nought.',
  example() {
    const readings = demoWeighing().weighing.points[0]?.readingsKg ?? [];
    const squares = summed(readings.length, (i) => `(q_${i} - \\bar{q})^2`);
    return {
      given: { ...numbered('q', readings, 'kg'), n: [readings.length, ''] },
      steps: [
        sum(`\\bar{q} = \\frac{${summed(readings.length, (i) => `q_${i}`)}}{n}`, meanOf(readings), 'kg'),
        sum(`u = \\sqrt{\\frac{${squares}}{n \\cdot (n - 1)}}`, standardErrorOfMean(readings), 'kg'),
      ],
    };
  },
};

const budget: Formula = {
  id: 'uncertainty-budget',
  title: 'How strongly mass and moment follow each source',
  tex: ['c = p', 'C = \\sum_i x_i', 'u = \\frac{d}{\\sqrt{12}} \\cdot \\sqrt{\\frac{1}{r} + t}'],
  symbols: [
    ['c', 'sensitivity of the mass to the error of a scale', ''],
    ['C', 'sensitivity of the moment to it', 'mm'],
    ['p', 'number of points that the scale stood under', ''],
    ['x_i', 'arm of each of these points', 'mm'],
    ['u', 'standard uncertainty that the display of a scale brings to a point', 'kg'],
    ['d', 'step of the display', 'kg'],
    ['r', 'number of runs', ''],
    ['t', '1 where a tare was read on the same display, else 0', ''],
  ],
  by: [weighingBudget],
  holds:
    'The error of a scale is common to all points that it stood under, so its effects add before they are squared. An arm that was measured moves the moment by the mass on it; a mass as stated moves mass and moment as any mass does.',
  example() {
    const { weighing, result } = demoWeighing();
    const lines = weighingBudget(DEMO.aircraft, weighing, result.points, result.adjustments);
    const [scale, display] = [lines[0], lines.find(({ component }) => component.kind === 'display-step')];
    const point = weighing.points[0];
    return {
      given: {
        p: [1, ''],
        x_1: [point?.armMm ?? Number.NaN, 'mm'],
        d: [weighing.scales[0]?.resolutionKg ?? Number.NaN, 'kg'],
        r: [point?.readingsKg.length ?? Number.NaN, ''],
        t: [1, ''],
      },
      steps: [
        sum('c = p', scale?.massSensitivity ?? Number.NaN),
        sum('C = x_1', scale?.momentSensitivity ?? Number.NaN, 'mm'),
        sum('u = \\frac{d}{\\sqrt{12}} \\cdot \\sqrt{\\frac{1}{r} + t}', display?.standard ?? Number.NaN, 'kg'),
      ],
    };
  },
};

export const uncertainty: Topic = {
  id: 'uncertainty',
  title: 'Uncertainty',
  formulas: [limit, ofDisplay, scatter, budget, ...combining],
};
