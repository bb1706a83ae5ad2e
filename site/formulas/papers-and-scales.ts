import { equipmentChange } from '../../worker/core/calc/mass/equipment-change.ts';
import { compareWeighing, predictEmpty } from '../../worker/core/calc/mass/prediction.ts';
import { residualOf } from '../../worker/core/calc/mass/residual.ts';
import { chiSquareOf } from '../../worker/core/calc/weighing/causes/covariance.ts';
import { COVERAGE_FACTOR } from '../../worker/core/calc/weighing/uncertainty.ts';
import { readVisit } from '../published/read-visit.ts';
import { DEMO, demoWeighing } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { said, sum } from './steps.ts';

function compared() {
  const { result } = demoWeighing();
  const prediction = predictEmpty(DEMO, equipmentChange(DEMO));
  if (!prediction) throw new Error('the demo visit has papers');
  return { result, prediction, comparison: compareWeighing(result, prediction) };
}

const PAPERS = 'u_p = \\sqrt{\\left( \\frac{U_0}{k} \\right)^2 + \\sum_i \\left( \\frac{a_i}{\\sqrt{3}} \\right)^2}';

const papers: Formula = {
  id: 'uncertainty-of-the-papers',
  title: 'Uncertainty of papers and changes',
  tex: [PAPERS],
  symbols: [
    ['u_p', 'standard uncertainty of the empty mass that papers and changes lead to', 'kg'],
    ['U_0', 'limit of the empty mass in the papers', 'kg'],
    ['k', 'coverage factor, 2', ''],
    ['a_i', 'limit of the mass of each item put in, taken out or corrected', 'kg'],
  ],
  by: [predictEmpty, equipmentChange],
  holds:
    'An item that was only moved counts nothing. A mass without a limit counts as exact. The arm follows in the same way.',
  example() {
    const visit = readVisit('computed-only');
    const prediction = predictEmpty(visit, equipmentChange(visit));
    return {
      given: {
        U_0: [visit.baseline?.emptyMassLimitKg ?? Number.NaN, 'kg'],
        k: [COVERAGE_FACTOR, ''],
        a_1: [0.02, 'kg'],
      },
      steps: [
        sum(
          'u_p = \\sqrt{\\left( \\frac{U_0}{k} \\right)^2 + \\left( \\frac{a_1}{\\sqrt{3}} \\right)^2}',
          prediction?.standard.massKg ?? Number.NaN,
          'kg',
        ),
      ],
    };
  },
};

const U = 'u_d = \\sqrt{u_w^2 + u_p^2}';
const RATIO = 'q = \\frac{|d|}{u_d}';

const comparison: Formula = {
  id: 'weighing-against-papers',
  title: 'Whether scales and papers differ',
  tex: ['d = m_w - m_p', U, RATIO],
  symbols: [
    ['d', 'difference; of the arms in the same way', 'kg'],
    ['m_w', 'empty mass as weighed', 'kg'],
    ['m_p', 'empty mass that papers and changes lead to', 'kg'],
    ['u_d', 'standard uncertainty of the difference', 'kg'],
    ['u_w', 'standard uncertainty of the weighing', 'kg'],
    ['u_p', 'standard uncertainty of papers and changes', 'kg'],
    ['q', 'difference in units of its standard uncertainty', ''],
  ],
  by: [compareWeighing, predictEmpty],
  holds:
    'Above 2 the difference cannot be scatter alone. A mass of which no limit is stated counts as exact, so the papers look surer than they are, and a difference is called significant sooner.',
  example() {
    const { result, prediction, comparison: found } = compared();
    return {
      given: {
        m_w: [result.empty.massKg, 'kg'],
        m_p: [prediction.massKg, 'kg'],
        u_w: [result.standard.massKg, 'kg'],
        u_p: [prediction.standard.massKg, 'kg'],
      },
      steps: [
        sum('d = m_w - m_p', found.differenceKg, 'kg'),
        sum(U, found.standard.massKg, 'kg'),
        sum(RATIO, found.massRatio),
        said(found.massRatio > COVERAGE_FACTOR ? 'More than 2: significant.' : 'Not more than 2: scatter explains it.'),
      ],
    };
  },
};

const ARM = 'x_r = \\frac{M_w - M_p}{r}';

const residual: Formula = {
  id: 'residual-mass',
  title: 'Mass that nobody has written down',
  tex: ['r = m_w - m_p', 'U = k \\cdot u_d', ARM],
  symbols: [
    ['r', 'residual: what the scales felt beyond the prediction', 'kg'],
    ['m_w', 'empty mass as weighed', 'kg'],
    ['m_p', 'empty mass that papers and changes lead to', 'kg'],
    ['U', 'expanded uncertainty of the residual', 'kg'],
    ['k', 'coverage factor, 2', ''],
    ['u_d', 'standard uncertainty of the difference', 'kg'],
    ['x_r', 'arm at which one such mass would sit', 'mm'],
    ['M_w', 'empty moment as weighed', 'kg·mm'],
    ['M_p', 'empty moment that papers and changes lead to', 'kg·mm'],
  ],
  by: [residualOf],
  holds:
    'The arm is given only where the mass is more than its expanded uncertainty. It is one mass somewhere, never an item.',
  example() {
    const { result, prediction } = compared();
    const heavier = { ...prediction, massKg: prediction.massKg - 5, momentKgMm: prediction.momentKgMm - 12_000 };
    const found = residualOf(result, heavier, compareWeighing(result, heavier));
    return {
      given: {
        m_w: [result.empty.massKg, 'kg'],
        m_p: [heavier.massKg, 'kg'],
        k: [COVERAGE_FACTOR, ''],
        u_d: [found.expandedKg / COVERAGE_FACTOR, 'kg'],
        M_w: [result.empty.momentKgMm, 'kg·mm'],
        M_p: [heavier.momentKgMm, 'kg·mm'],
      },
      steps: [
        sum('r = m_w - m_p', found.massKg, 'kg'),
        sum('U = k \\cdot u_d', found.expandedKg, 'kg'),
        sum(ARM, found.armMm ?? Number.NaN, 'mm'),
      ],
    };
  },
};

const CHI =
  '\\chi^2 = \\frac{V_{MM} \\cdot r^2 - 2 \\cdot V_{mM} \\cdot r \\cdot R + V_{mm} \\cdot R^2}{V_{mm} \\cdot V_{MM} - V_{mM}^2}';

const mismatch: Formula = {
  id: 'mismatch-of-mass-and-moment',
  title: 'Mismatch of mass and moment together',
  tex: [CHI],
  symbols: [
    ['\\chi^2', 'mismatch in units of its uncertainty, squared', ''],
    ['r', 'difference of the masses, less that of a cause', 'kg'],
    ['R', 'difference of the moments, less that of a cause', 'kg·mm'],
    ['V_{mm}', 'variance of the difference of the masses', 'kg²'],
    ['V_{mM}', 'covariance of both differences', 'kg²·mm'],
    ['V_{MM}', 'variance of the difference of the moments', 'kg²·mm²'],
  ],
  by: [chiSquareOf],
  holds:
    'Up to 5.99 a cause of known size explains the mismatch, up to 3.84 one whose size is fitted (95 %, from memory). Every single cause that explains it is named; two faults at once are not found.',
  example() {
    const covariance = { mm: 0.1, mM: 160, MM: 400_000 };
    const [massKg, momentKgMm] = [0.5, 1200];
    return {
      given: {
        r: [massKg, 'kg'],
        R: [momentKgMm, 'kg·mm'],
        'V_{mm}': [covariance.mm, 'kg²'],
        'V_{mM}': [covariance.mM, 'kg²·mm'],
        'V_{MM}': [covariance.MM, 'kg²·mm²'],
      },
      steps: [sum(CHI, chiSquareOf(covariance, { massKg, momentKgMm }))],
    };
  },
};

export const papersAndScales: Topic = {
  id: 'papers-and-scales',
  title: 'Papers against scales',
  formulas: [papers, comparison, residual, mismatch],
};
