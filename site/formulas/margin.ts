import { armOn, envelopeOf } from '../../worker/core/calc/loading/envelope.ts';
import { worstMargins } from '../../worker/core/calc/loading/margin.ts';
import { atArm, minus, total } from '../../worker/core/calc/mass/mass-moment.ts';
import type { Formula } from './formula.ts';
import { sum } from './steps.ts';

const BETA = '\\beta = \\frac{M_2 - M_1}{m_2 - m_1}';
const ALPHA = '\\alpha = M_1 - \\beta \\cdot m_1';
const WORST = 'm^{*} = \\sqrt{\\frac{-\\alpha}{\\delta}}';
const ARM = 'x = \\frac{\\alpha}{m^{*}} + \\beta';
const MARGIN = 'g = x_a - x';

/** Aft limit that moves aft with mass, so that the critical point is between two corners. */
const CORNERS = [
  { armMm: 1640, massKg: 480 },
  { armMm: 1640, massKg: 600 },
  { armMm: 1800, massKg: 600 },
  { armMm: 1780, massKg: 480 },
];

export const margin: Formula = {
  id: 'worst-margin',
  title: 'Worst margin along a line of loadings',
  tex: [BETA, ALPHA, WORST, ARM, MARGIN],
  symbols: [
    ['M_1', 'moment at the light end of the line', 'kg·mm'],
    ['M_2', 'moment at its heavy end', 'kg·mm'],
    ['m_1', 'mass at the light end', 'kg'],
    ['m_2', 'mass at the heavy end', 'kg'],
    ['\\beta', 'moment that each kilogram brings', 'mm'],
    ['\\alpha', 'moment that the line would have without mass', 'kg·mm'],
    ['\\delta', 'arm that the limit gains with each kilogram', 'mm/kg'],
    ['m^{*}', 'mass at which the margin is stationary', 'kg'],
    ['x', 'arm of the centre of gravity there', 'mm'],
    ['x_a', 'aft limit there', 'mm'],
    ['g', 'margin, positive inside; to the forward limit with the signs turned', 'mm'],
  ],
  by: [worstMargins],
  holds:
    'The worst margin is at the stationary mass, where the line has one, or at an end of the line or of a piece of the limit. All of these are looked at, so nothing is searched by steps.',
  example() {
    const light = atArm(480, 1770);
    const heavy = total([light, atArm(120, 1870)]);
    const envelope = envelopeOf(CORNERS);
    const piece = envelope?.aft[0];
    if (!envelope || !piece) throw new Error('the example has an aft limit');
    const line = [light, heavy].map((end) => ({ ...end, load: {} }));
    const worst = worstMargins(line, envelope, ['aft'])[0];
    const grown = minus(heavy, light);
    const beta = grown.momentKgMm / grown.massKg;
    const massKg = worst?.loading.massKg ?? Number.NaN;
    return {
      given: {
        M_1: [light.momentKgMm, 'kg·mm'],
        M_2: [heavy.momentKgMm, 'kg·mm'],
        m_1: [light.massKg, 'kg'],
        m_2: [heavy.massKg, 'kg'],
        '\\delta': [20 / 120, 'mm/kg'],
        x_a: [armOn(piece, massKg), 'mm'],
      },
      steps: [
        sum(BETA, beta, 'mm'),
        sum(ALPHA, light.momentKgMm - beta * light.massKg, 'kg·mm'),
        sum(WORST, massKg, 'kg'),
        sum(ARM, (worst?.loading.momentKgMm ?? Number.NaN) / massKg, 'mm'),
        sum(MARGIN, worst?.margin ?? Number.NaN, 'mm'),
      ],
    };
  },
};
