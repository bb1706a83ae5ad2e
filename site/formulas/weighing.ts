import { reduceWeighing, scaleCorrectionKg } from '../../worker/core/calc/weighing/weighing.ts';
import { weighingAdjustments } from '../../worker/core/calc/weighing/weighing-adjustments.ts';
import { weighingCase } from '../published/weighing-case.ts';
import { inputOf } from './case-of.ts';
import { demoWeighing } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

const NET = 'n = g + k - t';

const net: Formula = {
  id: 'net-reading',
  title: 'Net reading of a scale',
  tex: [NET],
  symbols: [
    ['n', 'net reading', 'kg'],
    ['g', 'reading of the scale', 'kg'],
    ['k', 'correction by the certificate of the scale at that reading', 'kg'],
    ['t', 'tare: chocks, stands and blocks', 'kg'],
  ],
  by: [reduceWeighing, scaleCorrectionKg],
  holds: 'For each run at each point. No correction for the buoyancy of air is made.',
  example() {
    const { weighing, result } = demoWeighing();
    const [point, scale] = [result.points[0], weighing.scales[0]];
    const grossKg = point?.runs[0]?.grossKg ?? Number.NaN;
    const correctionKg = scaleCorrectionKg(scale, grossKg);
    return {
      given: { g: [grossKg, 'kg'], k: [correctionKg, 'kg'], t: [point?.tareKg ?? Number.NaN, 'kg'] },
      steps: [sum(NET, point?.runs[0]?.netKg ?? Number.NaN, 'kg')],
    };
  },
};

const runs: Formula = {
  id: 'runs-of-a-weighing',
  title: 'Mean and spread of the runs at a point',
  tex: ['m = \\frac{1}{r} \\cdot \\sum_i n_i', 's = \\max(n_i) - \\min(n_i)'],
  symbols: [
    ['m', 'mass at the point', 'kg'],
    ['n_i', 'net reading of each run', 'kg'],
    ['r', 'number of runs', ''],
    ['s', 'spread of the runs', 'kg'],
  ],
  by: [reduceWeighing],
  holds: 'For any number of runs; the spread of one run is nought. How much spread is too much is a rule of the gate.',
  example() {
    const point = demoWeighing().result.points[0];
    const nets = point?.runs.map(({ netKg }) => netKg) ?? [];
    const all = nets.map((_, index) => `n_${index + 1}`).join(', ');
    return {
      given: { ...numbered('n', nets, 'kg'), r: [nets.length, ''] },
      steps: [
        sum(`m = \\frac{${summed(nets.length, (i) => `n_${i}`)}}{r}`, point?.massKg ?? Number.NaN, 'kg'),
        sum(`s = \\max(${all}) - \\min(${all})`, point?.spreadKg ?? Number.NaN, 'kg'),
      ],
    };
  },
};

const EMPTY_MASS = 'm = \\sum_i m_i - \\sum_j a_j + \\sum_k b_k';
const EMPTY_MOMENT = 'M = \\sum_i m_i \\cdot x_i - \\sum_j a_j \\cdot y_j + \\sum_k b_k \\cdot z_k';

interface WeighingInput {
  points: { reading: number; arm: number; tare: number }[];
  aboard: { mass: number; arm: number }[];
  missing: { mass: number; arm: number }[];
}

const empty: Formula = {
  id: 'empty-condition',
  title: 'From the weighed to the empty condition',
  tex: [EMPTY_MASS, EMPTY_MOMENT, 'x = \\frac{M}{m}'],
  symbols: [
    ['m', 'empty mass', 'kg'],
    ['M', 'empty moment', 'kg·mm'],
    ['x', 'arm of the empty centre of gravity', 'mm'],
    ['m_i', 'mass at each point, tare taken off', 'kg'],
    ['x_i', 'arm of the point', 'mm'],
    ['a_j', 'each mass aboard that is not part of the empty mass, usable fuel among them', 'kg'],
    ['y_j', 'its arm', 'mm'],
    ['b_k', 'each mass missing, unusable fuel of dry tanks among them', 'kg'],
    ['z_k', 'its arm', 'mm'],
  ],
  by: [reduceWeighing, weighingAdjustments],
  holds: 'Arms are those of the level aircraft; a weighing out of level is a finding and is not corrected.',
  example() {
    const input = inputOf<WeighingInput & Parameters<typeof weighingCase>[0]>('WB-02');
    const { mass = Number.NaN, moment = Number.NaN, arm = Number.NaN } = weighingCase(input);
    return {
      case: 'WB-02',
      given: {
        ...numbered(
          'm',
          input.points.map(({ reading, tare }) => reading - tare),
          'lb',
        ),
        ...numbered(
          'x',
          input.points.map((point) => point.arm),
          'in',
        ),
        ...numbered(
          'a',
          input.aboard.map((item) => item.mass),
          'lb',
        ),
        ...numbered(
          'y',
          input.aboard.map((item) => item.arm),
          'in',
        ),
        ...numbered(
          'b',
          input.missing.map((item) => item.mass),
          'lb',
        ),
        ...numbered(
          'z',
          input.missing.map((item) => item.arm),
          'in',
        ),
      },
      steps: [
        sum('m = m_1 + m_2 + m_3 - a_1 + b_1', mass, 'lb', 'mass'),
        sum(
          'M = m_1 \\cdot x_1 + m_2 \\cdot x_2 + m_3 \\cdot x_3 - a_1 \\cdot y_1 + b_1 \\cdot z_1',
          moment,
          'lb·in',
          'moment',
        ),
        sum('x = \\frac{M}{m}', arm, 'in', 'arm'),
      ],
    };
  },
};

export const weighingTopic: Topic = { id: 'weighing', title: 'Weighing', formulas: [net, runs, empty] };
