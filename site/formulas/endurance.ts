import { batteryEndurance, enduranceOn, landingCurrentA } from '../../worker/core/calc/electrical/endurance.ts';
import { currentA, fitted } from '../../worker/core/calc/electrical/load.ts';
import { inputOf } from './case-of.ts';
import { demoElectrical } from './demo.ts';
import type { Formula } from './formula.ts';
import { numbered, sum, summed } from './steps.ts';

const CHARGE = 'Q = 60 \\cdot C';
const SHED = 't_s = \\frac{Q - I_r \\cdot t_r - I_l \\cdot t_l}{I_s}';

const endurance: Formula = {
  id: 'endurance',
  title: 'Endurance on the battery',
  tex: [CHARGE, SHED, 't = t_r + t_s + t_l'],
  symbols: [
    ['Q', 'usable charge', 'A·min'],
    ['C', 'usable capacity: the capacity times the usable share', 'A·h'],
    ['I_r', 'load until the failure is noticed and loads are shed', 'A'],
    ['t_r', 'time until then', 'min'],
    ['I_l', 'load in approach and landing', 'A'],
    ['t_l', 'time of approach and landing, kept in hand', 'min'],
    ['I_s', 'load once loads are shed', 'A'],
    ['t_s', 'time on that load', 'min'],
    ['t', 'endurance', 'min'],
  ],
  by: [enduranceOn],
  holds:
    'At the usable capacity of the record: cold, age and a high current count only as far as the usable share includes them.',
  example() {
    const input = inputOf<Parameters<typeof enduranceOn>[0]>('EL-06');
    const { usableAmpMinutes, stretches, minutes = Number.NaN } = enduranceOn(input);
    return {
      case: 'EL-06',
      given: {
        C: [input.usableAh, 'A·h'],
        I_r: [input.recognise.loadA, 'A'],
        t_r: [input.recognise.minutes, 'min'],
        I_l: [input.landing.loadA, 'A'],
        t_l: [input.landing.minutes, 'min'],
        I_s: [input.shedA, 'A'],
      },
      steps: [
        sum(CHARGE, usableAmpMinutes, 'A·min', 'ampMinutes'),
        sum(SHED, stretches[1]?.minutes ?? Number.NaN, 'min', 'shedMin'),
        sum('t = t_r + t_s + t_l', minutes, 'min', 'totalMin'),
      ],
    };
  },
};

const landingLoad: Formula = {
  id: 'load-kept-for-landing',
  title: 'Load that is kept in hand for the landing',
  tex: ['I_l = \\sum_i \\max(a_i, b_i)'],
  symbols: [
    ['I_l', 'load in approach and landing on the battery', 'A'],
    ['a_i', 'current of each load in the landing that is left on or essential', 'A'],
    ['b_i', 'its current on the battery alone', 'A'],
  ],
  by: [batteryEndurance, landingCurrentA],
  holds: 'Intermittent loads count in full. Where the record states no reserve, 30 minutes are asked for.',
  example() {
    const electrical = demoElectrical();
    const { system } = electrical;
    const counted = fitted(electrical).filter((load) => landingCurrentA(load, system) > 0);
    const amps = (phase: 'landing' | 'sourceFailed'): number[] => counted.map((load) => currentA(load, phase, system));
    const found = batteryEndurance(electrical);
    return {
      given: {
        ...numbered('a', amps('landing'), 'A'),
        ...numbered('b', amps('sourceFailed'), 'A'),
      },
      steps: [
        sum(
          `I_l = ${summed(counted.length, (i) => `\\max(a_${i}, b_${i})`)}`,
          found?.stretches[2]?.loadA ?? Number.NaN,
          'A',
        ),
      ],
    };
  },
};

export const enduring: readonly Formula[] = [endurance, landingLoad];
