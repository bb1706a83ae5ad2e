import { armAlong } from '../../worker/core/calc/lateral/across.ts';
import { lateralLimitsOf } from '../../worker/core/calc/lateral/lateral-envelope.ts';
import { lateralJudge } from '../../worker/core/calc/lateral/lateral-verdict.ts';
import { combinePlan, lateralCg, type PlanPoint } from '../../worker/core/calc/mass/lateral.ts';
import { lateralMomentKgMm } from '../../worker/core/calc/mass/lateral-moment.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

/** Skid points of an invented helicopter. */
const POINTS: readonly PlanPoint[] = [
  { massKg: 150, armMm: 1900, lateralMm: -900, scale: 'left', standardKg: 0.4 },
  { massKg: 350, armMm: 2800, lateralMm: 900, scale: 'right', standardKg: 0.6 },
];

function weighed(): NonNullable<ReturnType<typeof lateralCg>> {
  const found = lateralCg(POINTS);
  if (!found) throw new Error('the points carry a mass');
  return found;
}

const MASSES = POINTS.map(({ massKg }) => massKg);
const ARMS = POINTS.map(({ armMm }) => armMm);
const LATERALS = POINTS.map(({ lateralMm }) => lateralMm);
const STANDARDS = POINTS.map(({ standardKg = 0 }) => standardKg);

const Y = 'Y = \\frac{\\sum_i m_i \\cdot y_i}{\\sum_i m_i}';

const place: Formula = {
  id: 'lateral-centre-of-gravity',
  title: 'Lateral centre of gravity',
  tex: [Y],
  symbols: [
    ['Y', 'lateral centre of gravity, right positive', 'mm'],
    ['m_i', 'mass at each point, or of each item', 'kg'],
    ['y_i', 'its distance from the plane of symmetry, right positive', 'mm'],
  ],
  by: [lateralCg],
  holds: 'By a weighing as by a loading, if the lateral moment of the empty aircraft is one of the items.',
  example: () => ({
    given: { ...numbered('m', MASSES, 'kg'), ...numbered('y', LATERALS, 'mm') },
    steps: [sum('Y = \\frac{m_1 \\cdot y_1 + m_2 \\cdot y_2}{m_1 + m_2}', weighed().lateralMm, 'mm')],
  }),
};

const U_X = 'u_x = \\sqrt{\\sum_i \\left( \\frac{x_i - X}{M} \\cdot u_i \\right)^2}';
const U_Y = 'u_y = \\sqrt{\\sum_i \\left( \\frac{y_i - Y}{M} \\cdot u_i \\right)^2}';
const COVARIANCE = 'C = \\sum_i \\frac{(x_i - X) \\cdot (y_i - Y)}{M^2} \\cdot u_i^2';

const covariance: Formula = {
  id: 'uncertainty-in-plan',
  title: 'Uncertainty of a centre of gravity in plan',
  tex: [U_X, U_Y, COVARIANCE],
  symbols: [
    ['u_x', 'standard uncertainty of the arm', 'mm'],
    ['u_y', 'standard uncertainty of the lateral centre of gravity', 'mm'],
    ['C', 'covariance of both', 'mm²'],
    ['x_i', 'arm of each point', 'mm'],
    ['y_i', 'its lateral distance', 'mm'],
    ['u_i', 'standard uncertainty of its reading', 'kg'],
    ['X', 'arm of the centre of gravity', 'mm'],
    ['Y', 'lateral centre of gravity', 'mm'],
    ['M', 'mass', 'kg'],
  ],
  by: [combinePlan, lateralCg],
  holds:
    'For readings on scales that differ. Points on one scale share its error, so their effects add before they are squared. The uncertainty of a measured distance adds the share of the mass on its point.',
  example() {
    const { massKg, armMm, lateralMm, standardArmMm, standardLateralMm, covarianceMm2 } = weighed();
    const squared = (of: 'x' | 'y', mean: 'X' | 'Y'): string =>
      summed(2, (i) => `\\left( \\frac{${of}_${i} - ${mean}}{M} \\cdot u_${i} \\right)^2`);
    const mixed = summed(2, (i) => `\\frac{(x_${i} - X) \\cdot (y_${i} - Y)}{M^2} \\cdot u_${i}^2`);
    return {
      given: {
        ...numbered('x', ARMS, 'mm'),
        ...numbered('y', LATERALS, 'mm'),
        ...numbered('u', STANDARDS, 'kg'),
        X: [armMm, 'mm'],
        Y: [lateralMm, 'mm'],
        M: [massKg, 'kg'],
      },
      steps: [
        sum(`u_x = \\sqrt{${squared('x', 'X')}}`, standardArmMm, 'mm'),
        sum(`u_y = \\sqrt{${squared('y', 'Y')}}`, standardLateralMm, 'mm'),
        sum(`C = ${mixed}`, covarianceMm2, 'mm²'),
      ],
    };
  },
};

const offset: Formula = {
  id: 'lateral-moment',
  title: 'Lateral moment of stated items',
  tex: ['L = \\sum_i m_i \\cdot y_i'],
  symbols: [
    ['L', 'lateral moment, right positive', 'kg·mm'],
    ['m_i', 'mass of each item, negative if it is missing', 'kg'],
    ['y_i', 'its lateral distance, right positive', 'mm'],
  ],
  by: [lateralMomentKgMm],
  holds: 'A limit of the offset moment names its items: here the occupants, without the empty aircraft.',
  example() {
    const { items } = inputOf<{ items: { mass: number; lateral: number }[] }>('HE-05');
    const moment = lateralMomentKgMm(items.map(({ mass, lateral }) => ({ massKg: mass, lateralMm: lateral })));
    return {
      case: 'HE-05',
      given: {
        ...numbered(
          'm',
          items.map(({ mass }) => mass),
          'lb',
        ),
        ...numbered(
          'y',
          items.map(({ lateral }) => lateral),
          'in',
        ),
      },
      steps: [sum(`L = ${summed(items.length, (i) => `m_${i} \\cdot y_${i}`)}`, moment, 'lb·in', 'moment')],
    };
  },
};

const LENGTH = 's = \\sqrt{(x_2 - x_1)^2 + (y_2 - y_1)^2}';
const MARGIN = 'd = \\frac{(x_2 - x_1) \\cdot (Y - y_1) - (y_2 - y_1) \\cdot (X - x_1)}{s}';

const limits: Formula = {
  id: 'lateral-limits',
  title: 'Margin to a lateral limit',
  tex: [LENGTH, MARGIN],
  symbols: [
    ['s', 'length of the side of the permitted area', 'mm'],
    ['d', 'margin to it, negative outside', 'mm'],
    ['x_1', 'arm of the first corner of the side', 'mm'],
    ['x_2', 'arm of its second corner', 'mm'],
    ['y_1', 'lateral distance of the first corner', 'mm'],
    ['y_2', 'lateral distance of the second corner', 'mm'],
    ['X', 'arm of the centre of gravity', 'mm'],
    ['Y', 'lateral centre of gravity', 'mm'],
  ],
  by: [lateralLimitsOf, lateralJudge],
  holds:
    'For convex areas. On the left the first corner of a side is the forward one, on the right the aft one. The smallest margin of all sides and of the whole burn counts.',
  example() {
    const corners = [
      { armMm: 2400, lateralArmMm: -90 },
      { armMm: 2560, lateralArmMm: -40 },
      { armMm: 2560, lateralArmMm: 50 },
      { armMm: 2400, lateralArmMm: 60 },
    ];
    const [armMm, lateralMm] = [2480, -20];
    const judge = lateralJudge(
      { stations: [], maximumMassKg: 1, lateralEnvelope: { by: 'arm', corners } },
      { massKg: 1, lateralKgMm: lateralMm },
    );
    const verdict = judge?.([{ massKg: 1, momentKgMm: armMm, load: {} }]);
    return {
      given: {
        x_1: [2400, 'mm'],
        x_2: [2560, 'mm'],
        y_1: [-90, 'mm'],
        y_2: [-40, 'mm'],
        X: [armMm, 'mm'],
        Y: [lateralMm, 'mm'],
      },
      steps: [sum(LENGTH, Math.hypot(160, 50), 'mm'), sum(MARGIN, verdict?.marginMm ?? Number.NaN, 'mm')],
    };
  },
};

const ALONG = 'n = a \\cdot x + b \\cdot y';

const along: Formula = {
  id: 'arm-along-a-direction',
  title: 'Arm along a direction',
  tex: [ALONG],
  symbols: [
    ['n', 'arm along the direction', 'mm'],
    ['a', 'share of the direction along the aircraft', ''],
    ['b', 'its share across', ''],
    ['x', 'arm', 'mm'],
    ['y', 'lateral arm, right positive', 'mm'],
  ],
  by: [armAlong],
  holds:
    'An edge of an area over both arms limits the arm at right angles to it, so the extremes in that direction are found like those along the aircraft.',
  example: () => ({
    given: { a: [0.3, ''], b: [0.95, ''], x: [2400, 'mm'], y: [-40, 'mm'] },
    steps: [sum(ALONG, armAlong({ along: 0.3, across: 0.95 }, { armMm: 2400, lateralArmMm: -40 }), 'mm')],
  }),
};

export const lateral: Topic = {
  id: 'lateral',
  title: 'Lateral balance',
  formulas: [place, along, covariance, offset, limits],
};
