import { cockpitGrid } from '../../worker/core/calc/loading/cockpit-grid.ts';
import { dryMaximumKg, mostPilotByNonLifting, waterAllowedKg } from '../../worker/core/calc/loading/non-lifting.ts';
import { trimFactor, trimmedPilotKg } from '../../worker/core/calc/loading/trim-factors.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

const nonLifting: Formula = {
  id: 'pilot-by-non-lifting-mass',
  title: 'Max. pilot by the mass of the non-lifting parts',
  tex: ['p = m_n - \\sum_i m_i', 'u_p = \\sqrt{\\sum_i u_i^2}'],
  symbols: [
    ['p', 'max. mass of the pilot', 'kg'],
    ['m_n', 'max. mass of the non-lifting parts', 'kg'],
    ['m_i', 'each part that counts: fuselage with equipment, tailplane, baggage, engine', 'kg'],
    ['u_p', 'standard uncertainty of p', 'kg'],
    ['u_i', 'standard uncertainty of each part', 'kg'],
  ],
  by: [mostPilotByNonLifting],
  holds: 'The manual decides whether battery and water in the fin count.',
  example() {
    const { maximum, parts } = inputOf<{ maximum: number; parts: number[] }>('GL-06a');
    const standards = [0.2, 0.1];
    const pilot = mostPilotByNonLifting(
      maximum,
      parts.map((massKg, index) => ({ massKg, standardKg: standards[index] ?? 0 })),
    );
    return {
      case: 'GL-06a',
      given: { m_n: [maximum, 'kg'], ...numbered('m', parts, 'kg'), ...numbered('u', standards, 'kg') },
      steps: [
        sum('p = m_n - m_1 - m_2', pilot.massKg, 'kg', 'pilot'),
        sum('u_p = \\sqrt{u_1^2 + u_2^2}', pilot.standardKg, 'kg'),
      ],
    };
  },
};

const DRY = 'm_d = \\min(m_n + m_w, m_l)';
const WATER = 'w = m_{\\max} - m_0 - c - f';

const waterAllowed: Formula = {
  id: 'dry-maximum-and-water',
  title: 'Max. mass without water, and water up to the maximum',
  tex: [DRY, WATER],
  symbols: [
    ['m_d', 'max. mass without water in the wings', 'kg'],
    ['m_n', 'max. mass of the non-lifting parts', 'kg'],
    ['m_w', 'mass of the wings', 'kg'],
    ['m_l', 'limit without water, if the manual states one', 'kg'],
    ['w', 'water in the wings', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m_0', 'empty mass', 'kg'],
    ['c', 'load of the cockpit', 'kg'],
    ['f', 'load of the fin', 'kg'],
  ],
  by: [dryMaximumKg, waterAllowedKg],
  holds: 'The tanks may take less. A negative figure means that the aircraft is too heavy without water.',
  example: () => ({
    given: {
      m_n: [250, 'kg'],
      m_w: [140, 'kg'],
      m_l: [380, 'kg'],
      'm_{\\max}': [600, 'kg'],
      m_0: [330, 'kg'],
      c: [95, 'kg'],
      f: [8, 'kg'],
    },
    steps: [
      sum(DRY, dryMaximumKg({ maximumNonLiftingKg: 250, wingsKg: 140, limitKg: 380 }), 'kg'),
      sum(WATER, waterAllowedKg({ maximumKg: 600, emptyKg: 330, cockpitKg: 95, finKg: 8 }), 'kg'),
    ],
  }),
};

const FACTOR = 'k = \\frac{x - x_a}{x_a - x_p}';

const factor: Formula = {
  id: 'trim-factor',
  title: 'Pilot that a trim mass replaces',
  tex: [FACTOR],
  symbols: [
    ['k', 'change of the min. pilot by each kilogram: negative in the nose, positive in the tail', ''],
    ['x', 'arm of the trim mass', 'mm'],
    ['x_a', 'aft limit', 'mm'],
    ['x_p', 'arm of the pilot', 'mm'],
  ],
  by: [trimFactor],
  holds: 'For the min. pilot by the aft limit.',
  example: () => ({
    given: { x: [4215, 'mm'], x_a: [387, 'mm'], x_p: [-410, 'mm'] },
    steps: [sum(FACTOR, trimFactor({ massArmMm: 4215, limitArmMm: 387, seatArmMm: -410 }))],
  }),
};

const trimmed: Formula = {
  id: 'trimmed-pilot',
  title: 'Min. pilot with trim masses',
  tex: ['p = p_0 + \\sum_i k_i \\cdot m_i'],
  symbols: [
    ['p', 'min. pilot with the trim masses', 'kg'],
    ['p_0', 'min. pilot without them', 'kg'],
    ['k_i', 'factor of each', ''],
    ['m_i', 'its mass', 'kg'],
  ],
  by: [trimmedPilotKg],
  holds: 'With the factors of the manual, or of the formula above.',
  example() {
    const { basic, masses } = inputOf<{ basic: number; masses: { mass: number; factor: number }[] }>('GL-04');
    const pilot = trimmedPilotKg(
      basic,
      masses.map((each) => ({ massKg: each.mass, factor: each.factor })),
    );
    return {
      case: 'GL-04',
      given: {
        p_0: [basic, 'kg'],
        ...numbered(
          'k',
          masses.map((each) => each.factor),
          '',
        ),
        ...numbered(
          'm',
          masses.map((each) => each.mass),
          'kg',
        ),
      },
      steps: [sum(`p = p_0 + ${summed(masses.length, (i) => `k_${i} \\cdot m_${i}`)}`, pilot, 'kg', 'pilot')],
    };
  },
};

const LOWER = 'p_1 = \\max(p_a, p_s)';
const UPPER = 'p_2 = \\min(p_f, p_n, p_m, p_t)';

const grid: Formula = {
  id: 'pilot-of-a-state',
  title: 'Min. and max. pilot of a state',
  tex: [LOWER, UPPER],
  symbols: [
    ['p_1', 'min. pilot', 'kg'],
    ['p_2', 'max. pilot', 'kg'],
    ['p_a', 'min. pilot by the aft limit', 'kg'],
    ['p_s', 'stated minimum of the seat or the state', 'kg'],
    ['p_f', 'max. pilot by the forward limit', 'kg'],
    ['p_n', 'max. pilot by the mass of the non-lifting parts', 'kg'],
    ['p_m', 'max. pilot by the maximum mass', 'kg'],
    ['p_t', 'stated maximum of the seat or the state', 'kg'],
  ],
  by: [cockpitGrid],
  holds:
    'For each state of water, battery, engine and fuel, with the masses that are worst for each limit. A limit that is not known does not count. A state whose min. is above its max. stays in the table and is marked.',
  example() {
    const { seatMaximum, nonLifting: limits } = inputOf<{
      seatMaximum: number;
      nonLifting: { maximum: number; parts: number[] };
    }>('GL-06b');
    const parts = limits.parts.map((massKg) => ({ massKg }));
    const bare = { emptyKg: 0, emptyMomentKgMm: 0, seatArmMm: 0, maximumKg: seatMaximum };
    const [row] =
      cockpitGrid({ ...bare, nonLifting: { maximumKg: limits.maximum, parts } }, [{ id: 'state', extras: [] }]) ?? [];
    return {
      case: 'GL-06b',
      given: { p_n: [mostPilotByNonLifting(limits.maximum, parts).massKg, 'kg'], p_t: [seatMaximum, 'kg'] },
      steps: [sum('p_2 = \\min(p_n, p_t)', row?.maximum?.massKg ?? Number.NaN, 'kg', 'maximum1')],
    };
  },
};

export const cockpitLimits: readonly Formula[] = [nonLifting, grid, factor, trimmed, waterAllowed];
