import { leastPilotByAftLimit, mostPilotByForwardLimit } from '../../worker/core/calc/loading/cockpit-load.ts';
import type { GLIDER_TOPICS } from '../published/glider-cases.ts';
import { inputOf } from './case-of.ts';
import { cockpitLimits } from './cockpit-limits.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';
import { water } from './water-ballast.ts';

type CockpitLoad = Parameters<(typeof GLIDER_TOPICS)['cockpit-load']>[0];

/** An example of the limit of a pilot from a published case. */
function pilotOf(id: string): { given: Parameters<typeof leastPilotByAftLimit>[0]; input: CockpitLoad } {
  const input = inputOf<CockpitLoad>(id);
  const { empty, seat, limit } = input;
  const given = { emptyKg: empty.mass, emptyMomentKgMm: empty.moment, seatArmMm: seat, limitArmMm: limit };
  return { given, input };
}

const AFT = 'p = \\frac{S - x_a \\cdot m}{x_a - x_p}';

const byAftLimit: Formula = {
  id: 'pilot-by-the-aft-limit',
  title: 'Min. pilot by the aft limit',
  tex: [AFT],
  symbols: [
    ['p', 'min. mass of the pilot', 'kg'],
    ['S', 'sum of the moments without the pilot', 'kg·mm'],
    ['m', 'mass without the pilot', 'kg'],
    ['x_a', 'aft limit', 'mm'],
    ['x_p', 'arm of the pilot, ahead of the limit', 'mm'],
  ],
  by: [leastPilotByAftLimit],
  holds:
    'With every mass aft of the limit that may be on board, and without every mass ahead of it that may be missing: tail water, a battery in the fin, fuel, a retracted engine.',
  example() {
    const { given, input } = pilotOf('GL-09a');
    return {
      case: 'GL-09a',
      given: {
        S: [input.empty.moment, 'kg·m'],
        m: [input.empty.mass, 'kg'],
        x_a: [input.limit, 'm'],
        x_p: [input.seat, 'm'],
      },
      steps: [sum(AFT, leastPilotByAftLimit(given)?.massKg ?? Number.NaN, 'kg', 'pilot')],
    };
  },
};

const FORWARD = 'p = \\frac{S - x_f \\cdot m}{x_f - x_p}';

const byForwardLimit: Formula = {
  id: 'pilot-by-the-forward-limit',
  title: 'Max. pilot by the forward limit',
  tex: [FORWARD],
  symbols: [
    ['p', 'max. mass of the pilot', 'kg'],
    ['S', 'sum of the moments without the pilot', 'kg·mm'],
    ['m', 'mass without the pilot', 'kg'],
    ['x_f', 'forward limit', 'mm'],
    ['x_p', 'arm of the pilot, ahead of the limit', 'mm'],
  ],
  by: [mostPilotByForwardLimit],
  holds:
    'With every mass ahead of the limit that may be on board, and without every mass aft of it that may be missing. So S and m are not those of the aft limit.',
  example() {
    const { given, input } = pilotOf('GL-09b');
    return {
      case: 'GL-09b',
      given: {
        S: [input.empty.moment, 'kg·m'],
        m: [input.empty.mass, 'kg'],
        x_f: [input.limit, 'm'],
        x_p: [input.seat, 'm'],
      },
      steps: [sum(FORWARD, mostPilotByForwardLimit(given)?.massKg ?? Number.NaN, 'kg', 'pilot')],
    };
  },
};

const STANDARD =
  'u_p = \\frac{1}{x_l - x_p} \\cdot \\sqrt{\\sum_i \\left( (C_i - x_l \\cdot c_i) \\cdot u_i \\right)^2 + (p \\cdot u_x)^2}';

const uncertain: Formula = {
  id: 'uncertainty-of-a-pilot-limit',
  title: 'Uncertainty of a limit of the pilot',
  tex: [STANDARD],
  symbols: [
    ['u_p', 'standard uncertainty of the limit of the pilot', 'kg'],
    ['x_l', 'aft or forward limit', 'mm'],
    ['x_p', 'arm of the pilot', 'mm'],
    ['C_i', 'sensitivity of the empty moment to each reading; its arm', 'mm'],
    ['c_i', 'sensitivity of the empty mass to it; 1', ''],
    ['u_i', 'standard uncertainty of the reading', 'kg'],
    ['p', 'limit of the pilot', 'kg'],
    ['u_x', 'standard uncertainty of the arm of the pilot', 'mm'],
  ],
  by: [leastPilotByAftLimit],
  holds:
    'Empty mass and moment come from the same readings. Taken for independent they would give a figure that depends on the datum.',
  example() {
    const [emptyKg, emptyMomentKgMm] = [250, 214 * 110 + 36 * 3980];
    const arms = [110, 3980];
    const standards = [0.2, 0.1];
    const budget = arms.map((arm, index) => ({
      standard: standards[index] ?? Number.NaN,
      massSensitivity: 1,
      momentSensitivity: arm,
    }));
    const at = { limitArmMm: 400, seatArmMm: -480, standardSeatArmMm: 15 };
    const pilot = leastPilotByAftLimit({ emptyKg, emptyMomentKgMm, budget, ...at });
    const terms = summed(2, (i) => `\\left( (C_${i} - x_l \\cdot c_${i}) \\cdot u_${i} \\right)^2`);
    return {
      given: {
        ...numbered('C', arms, 'mm'),
        ...numbered('c', [1, 1], ''),
        ...numbered('u', standards, 'kg'),
        x_l: [at.limitArmMm, 'mm'],
        x_p: [at.seatArmMm, 'mm'],
        p: [pilot?.massKg ?? Number.NaN, 'kg'],
        u_x: [at.standardSeatArmMm, 'mm'],
      },
      steps: [
        sum(
          `u_p = \\frac{1}{x_l - x_p} \\cdot \\sqrt{${terms} + (p \\cdot u_x)^2}`,
          pilot?.standardKg ?? Number.NaN,
          'kg',
        ),
      ],
    };
  },
};

export const cockpit: Topic = {
  id: 'cockpit-load',
  title: 'Cockpit load and water ballast',
  formulas: [byAftLimit, byForwardLimit, uncertain, ...cockpitLimits, ...water],
};
