import { armAlong } from '../../worker/core/calc/lateral/across.ts';
import { lateralMargins } from '../../worker/core/calc/loading/lateral-limits.ts';
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

const SLOPE = 'q = \\frac{y_2 - y_1}{x_2 - x_1}';
const LIMIT = 'y_l = y_1 + q \\cdot (X - x_1)';
const MARGIN = 'd = Y - y_l';
const STANDARD = 'u_d = \\sqrt{u_y^2 + q^2 \\cdot u_x^2 - 2 \\cdot q \\cdot C}';

const limits: Formula = {
  id: 'lateral-limits',
  title: 'Margin to a lateral limit',
  tex: [SLOPE, LIMIT, MARGIN, STANDARD],
  symbols: [
    ['q', 'slope of the side of the polygon', ''],
    ['y_l', 'left limit at the arm of the centre of gravity', 'mm'],
    ['d', 'margin to it; to the right limit with the other sign', 'mm'],
    ['u_d', 'standard uncertainty of the margin', 'mm'],
    ['x_1', 'arm of the forward corner of the side', 'mm'],
    ['x_2', 'arm of its aft corner', 'mm'],
    ['y_1', 'lateral distance of the forward corner', 'mm'],
    ['y_2', 'lateral distance of the aft corner', 'mm'],
    ['X', 'arm of the centre of gravity', 'mm'],
    ['Y', 'lateral centre of gravity', 'mm'],
    ['u_x', 'standard uncertainty of the arm', 'mm'],
    ['u_y', 'standard uncertainty of the lateral centre of gravity', 'mm'],
    ['C', 'covariance of both', 'mm²'],
  ],
  by: [lateralMargins],
  holds: 'For polygons that every arm crosses twice. Left and right sides may differ.',
  example() {
    const corners = [
      { armMm: 2400, lateralMm: -90 },
      { armMm: 2400, lateralMm: 60 },
      { armMm: 2560, lateralMm: 50 },
      { armMm: 2560, lateralMm: -40 },
    ];
    const at = { armMm: 2440, lateralMm: -20, standardArmMm: 3, standardLateralMm: 2, covarianceMm2: 1.5 };
    const left = lateralMargins(corners, at)?.left;
    return {
      given: {
        x_1: [2400, 'mm'],
        x_2: [2560, 'mm'],
        y_1: [-90, 'mm'],
        y_2: [-40, 'mm'],
        X: [at.armMm, 'mm'],
        Y: [at.lateralMm, 'mm'],
        u_x: [at.standardArmMm, 'mm'],
        u_y: [at.standardLateralMm, 'mm'],
        C: [at.covarianceMm2, 'mm²'],
      },
      steps: [
        sum(SLOPE, 50 / 160),
        sum(LIMIT, left?.limitMm ?? Number.NaN, 'mm'),
        sum(MARGIN, left?.marginMm ?? Number.NaN, 'mm'),
        sum(STANDARD, left?.standardMm ?? Number.NaN, 'mm'),
      ],
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
    'Each edge of an area over both arms is a limit along its normal, so the extremes of all loadings towards it are found as those along the aircraft.',
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
