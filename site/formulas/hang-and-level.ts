import { attitudeShift } from '../../worker/core/calc/weighing/attitude.ts';
import { type HangTests, hangAngle, hungCg } from '../../worker/core/calc/weighing/hang.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

/** A formula as it is read: its example turns degrees into radians. */
const plain = (tex: string): string => tex.replaceAll('^{\\circ}', '');

const SHIFT = '\\Delta x = -h \\cdot \\tan(\\theta^{\\circ})';
const U_SHIFT =
  'u = \\sqrt{(\\tan(\\theta^{\\circ}) \\cdot u_h)^2 + \\left( \\frac{h \\cdot \\pi \\cdot u_\\theta}{180 \\cdot \\cos(\\theta^{\\circ})^2} \\right)^2}';

const attitude: Formula = {
  id: 'attitude',
  title: 'Aircraft that is not level',
  tex: [plain(SHIFT), plain(U_SHIFT)],
  symbols: [
    ['\\Delta x', 'correction to be added to the apparent arm; sideways in the same way', 'mm'],
    ['h', 'height of the centre of gravity above the weighing points', 'mm'],
    ['\\theta', 'nose up; right side down for the lateral distance', '°'],
    ['u', 'standard uncertainty of the correction', 'mm'],
    ['u_h', 'standard uncertainty of the height', 'mm'],
    ['u_\\theta', 'standard uncertainty of the attitude', '°'],
  ],
  by: [attitudeShift],
  holds: 'For points at one height. At level the correction is nil, and its uncertainty is not.',
  example() {
    const found = attitudeShift({ heightMm: 900, standardHeightMm: 40, errorDeg: 0.5, standardErrorDeg: 0.1 });
    return {
      given: { h: [900, 'mm'], '\\theta': [0.5, '°'], u_h: [40, 'mm'], 'u_\\theta': [0.1, '°'] },
      steps: [sum(SHIFT, found.shiftMm, 'mm'), sum(U_SHIFT, found.standardMm, 'mm')],
    };
  },
};

const DEPTH = 'H = z_b - Z';
const SLOPE = 's = \\frac{X - x_b}{H}';
const ANGLE = '\\alpha = \\frac{180}{\\pi} \\cdot \\arctan(s)';
const U_ANGLE = 'u_\\alpha = \\frac{180}{\\pi} \\cdot \\frac{\\sqrt{u_x^2 + (s \\cdot u_z)^2}}{H \\cdot (1 + s^2)}';

const angle: Formula = {
  id: 'hang-angle',
  title: 'Angle of an aircraft under one bolt',
  tex: [DEPTH, SLOPE, ANGLE, U_ANGLE],
  symbols: [
    ['H', 'depth of the centre of gravity below the bolt', 'mm'],
    ['z_b', 'height of the bolt', 'mm'],
    ['Z', 'height of the centre of gravity', 'mm'],
    ['s', 'slope', ''],
    ['X', 'arm of the centre of gravity', 'mm'],
    ['x_b', 'arm of the bolt', 'mm'],
    ['\\alpha', 'angle, tail down positive', '°'],
    ['u_\\alpha', 'standard uncertainty of the angle', '°'],
    ['u_x', 'standard uncertainty of the arm', 'mm'],
    ['u_z', 'standard uncertainty of the height', 'mm'],
  ],
  by: [hangAngle],
  holds: 'In the axes of the aircraft, for a bolt that turns freely.',
  example() {
    const hung = { cgArmMm: 60, cgHeightMm: 700, boltArmMm: 0, boltHeightMm: 1700 };
    const found = hangAngle({ ...hung, standardCgArmMm: 4, standardCgHeightMm: 15 });
    return {
      given: {
        z_b: [hung.boltHeightMm, 'mm'],
        Z: [hung.cgHeightMm, 'mm'],
        X: [hung.cgArmMm, 'mm'],
        x_b: [hung.boltArmMm, 'mm'],
        u_x: [4, 'mm'],
        u_z: [15, 'mm'],
      },
      steps: [
        sum(DEPTH, 1000, 'mm'),
        sum(SLOPE, 0.06),
        sum(ANGLE, found?.angleDeg ?? Number.NaN, '°'),
        sum(U_ANGLE, found?.standardDeg ?? Number.NaN, '°'),
      ],
    };
  },
};

const FIRST = 's_1 = \\tan(\\alpha_1^{\\circ})';
const SECOND = 's_2 = \\tan(\\alpha_2^{\\circ})';
const FOUND = 'H = \\frac{m \\cdot (d - h \\cdot s_2)}{M \\cdot (s_2 - s_1)}';
const ARM = 'X = x_b + H \\cdot s_1';

const twoTests: Formula = {
  id: 'two-hang-tests',
  title: 'Centre of gravity by two hang tests',
  tex: [plain(FIRST), plain(SECOND), FOUND, ARM],
  symbols: [
    ['s_1', 'slope without the known mass', ''],
    ['s_2', 'slope with it', ''],
    ['\\alpha_1', 'angle without the known mass, tail down positive', '°'],
    ['\\alpha_2', 'angle with it', '°'],
    ['H', 'depth of the centre of gravity below the bolt', 'mm'],
    ['X', 'arm of the centre of gravity', 'mm'],
    ['x_b', 'arm of the bolt', 'mm'],
    ['m', 'known mass', 'kg'],
    ['d', 'its distance aft of the bolt', 'mm'],
    ['h', 'its distance below the bolt', 'mm'],
    ['M', 'mass of the aircraft without it', 'kg'],
  ],
  by: [hungCg],
  holds:
    'In the axes of the aircraft. The uncertainty comes from the partial derivatives, with one common error of both angles. It falls as the angles differ more: 3° or more is advised. Blades that were removed are added at the bolt.',
  example() {
    const tests: HangTests = {
      massKg: 260,
      boltArmMm: 1800,
      addedKg: 20,
      addedAftMm: 1400,
      addedBelowMm: 1100,
      firstDeg: 4,
      secondDeg: 9,
    };
    const found = hungCg({ ...tests, standardReadingDeg: 0.1 });
    return {
      given: {
        '\\alpha_1': [tests.firstDeg, '°'],
        '\\alpha_2': [tests.secondDeg, '°'],
        m: [tests.addedKg, 'kg'],
        d: [tests.addedAftMm, 'mm'],
        h: [tests.addedBelowMm, 'mm'],
        M: [tests.massKg, 'kg'],
        x_b: [tests.boltArmMm, 'mm'],
      },
      steps: [
        sum(FIRST, Math.tan((tests.firstDeg * Math.PI) / 180)),
        sum(SECOND, Math.tan((tests.secondDeg * Math.PI) / 180)),
        sum(FOUND, found?.depthMm ?? Number.NaN, 'mm'),
        sum(ARM, found?.armMm ?? Number.NaN, 'mm'),
      ],
    };
  },
};

export const hangAndLevel: Topic = {
  id: 'hang-and-level',
  title: 'Attitude and hang tests',
  formulas: [attitude, angle, twoTests],
};
