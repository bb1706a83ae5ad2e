import { readVisit } from '../../tests/calc/read-visit.ts';
import { batteryEndurance, enduranceOn } from '../../worker/calc/electrical/endurance.ts';
import { currentA, loadByPhase, REGULATED_V, sumOf } from '../../worker/calc/electrical/load.ts';
import { needsWatching } from '../../worker/calc/electrical/monitoring.ts';
import type { Electrical } from '../../worker/visit/visit.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, said, sum, summed } from './steps.ts';

/** The electrical part of the demo visit. */
export function demoElectrical(): Electrical {
  const { electrical } = readVisit('nose-wheel-full');
  if (!electrical) throw new Error('the demo visit has an electrical part');
  return electrical;
}

const current: Formula = {
  id: 'current-of-a-load',
  title: 'Current of a load from its power',
  tex: ['I = \\frac{P}{U}'],
  symbols: [
    ['I', 'current', 'A'],
    ['P', 'power', 'W'],
    ['U', 'voltage: regulated 14 or 28 V, on the battery alone 12 or 24 V', 'V'],
  ],
  by: [currentA],
  holds: 'Where the record gives no current for the phase. A load with neither draws nothing in it.',
  example() {
    const { loads, system } = demoElectrical();
    const light = loads.find(({ id }) => id === 'L-LDG');
    if (!light) throw new Error('the demo visit has a landing light');
    return {
      given: { P: [light.watts?.landing ?? Number.NaN, 'W'], U: [REGULATED_V[system], 'V'] },
      steps: [sum('I = \\frac{P}{U}', currentA(light, 'landing', system), 'A')],
    };
  },
};

const loads: Formula = {
  id: 'load-of-a-phase',
  title: 'Load of a phase of flight',
  tex: ['I_c = \\sum_i c_i', 'I_p = I_c + \\sum_i p_i'],
  symbols: [
    ['I_c', 'continuous load', 'A'],
    ['c_i', 'current of each continuous load', 'A'],
    ['I_p', 'greatest load', 'A'],
    ['p_i', 'current of each intermittent load', 'A'],
  ],
  by: [sumOf, loadByPhase],
  holds: 'All intermittent loads are taken as on at once. The load before the visit is added up in the same way.',
  example() {
    const electrical = demoElectrical();
    const fitted = electrical.loads.filter(({ change }) => change !== 'removed');
    const amps = (duty: 'continuous' | 'intermittent'): number[] =>
      fitted
        .filter((load) => load.duty === duty)
        .map((load) => currentA(load, 'cruise', electrical.system))
        .filter((value) => value > 0);
    const [continuous, intermittent] = [amps('continuous'), amps('intermittent')];
    const cruise = loadByPhase(electrical).find(({ phase }) => phase === 'cruise');
    const { continuousA } = sumOf(fitted, 'cruise', electrical.system);
    return {
      given: { ...numbered('c', continuous, 'A'), ...numbered('p', intermittent, 'A') },
      steps: [
        sum(`I_c = ${summed(continuous.length, (i) => `c_${i}`)}`, continuousA, 'A'),
        sum(`I_p = I_c + ${summed(intermittent.length, (i) => `p_${i}`)}`, cruise?.peakA ?? Number.NaN, 'A'),
      ],
    };
  },
};

const OUTPUT = 'I_s = \\min \\left( I_r, I_1 + \\frac{n - n_1}{n_2 - n_1} \\cdot (I_2 - I_1) \\right)';

const output: Formula = {
  id: 'output-of-a-source',
  title: 'Output of an alternator',
  tex: [OUTPUT],
  symbols: [
    ['I_s', 'what the source gives', 'A'],
    ['I_r', 'its rating, or that of its regulator where it is less', 'A'],
    ['n', 'engine speed in the phase', '1/min'],
    ['n_1', 'speed of the point before in its curve', '1/min'],
    ['n_2', 'speed of the point after', '1/min'],
    ['I_1', 'output at the point before', 'A'],
    ['I_2', 'output at the point after', 'A'],
  ],
  by: [loadByPhase],
  holds: 'A curve without a speed counts with its least output; without a curve the rating counts.',
  example() {
    const electrical = demoElectrical();
    const cruise = loadByPhase(electrical).find(({ phase }) => phase === 'cruise');
    const [low, high] = electrical.sources[0]?.outputBySpeed?.slice(3) ?? [];
    return {
      given: {
        I_r: [electrical.sources[0]?.ratedA ?? Number.NaN, 'A'],
        n: [electrical.engineRpm?.cruise ?? Number.NaN, '1/min'],
        n_1: [low?.engineRpm ?? Number.NaN, '1/min'],
        n_2: [high?.engineRpm ?? Number.NaN, '1/min'],
        I_1: [low?.outputA ?? Number.NaN, 'A'],
        I_2: [high?.outputA ?? Number.NaN, 'A'],
      },
      steps: [sum(OUTPUT, cruise?.capacityA ?? Number.NaN, 'A')],
    };
  },
};

const watched: Formula = {
  id: 'eighty-per-cent',
  title: 'Load that must be watched',
  tex: ['I_w = 0.8 \\cdot I_s'],
  symbols: [
    ['I_w', 'continuous load above which the crew need something to watch it by', 'A'],
    ['I_s', 'what the sources give', 'A'],
  ],
  by: [needsWatching],
  holds: 'A load of exactly 80 % need not be watched.',
  example() {
    const { continuousA, capacityA } = inputOf<Record<'continuousA' | 'capacityA', number>>('EL-04b');
    const isOver = needsWatching(continuousA, capacityA);
    return {
      case: 'EL-04b',
      given: { I_s: [capacityA, 'A'] },
      steps: [
        sum('I_w = 0.8 \\cdot I_s', 0.8 * capacityA, 'A'),
        said(`A load of ${continuousA} A is ${isOver ? 'more, and must' : 'not more, and need not'} be watched.`, {
          over: Number(isOver),
        }),
      ],
    };
  },
};

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
  holds: 'At the capacity of the record; neither cold nor a high current lowers it further.',
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
  tex: ['I_l = \\max \\left( I_s, \\sum_i \\max(a_i, b_i) \\right)'],
  symbols: [
    ['I_l', 'load in approach and landing on the battery', 'A'],
    ['I_s', 'continuous load once loads are shed', 'A'],
    ['a_i', 'current of each essential load in the landing', 'A'],
    ['b_i', 'its current on the battery alone', 'A'],
  ],
  by: [batteryEndurance],
  holds: 'Intermittent loads count in full. Where the record states no reserve, 30 minutes are asked for.',
  example() {
    const electrical = demoElectrical();
    const essential = electrical.loads.filter(({ change, isEssential }) => change !== 'removed' && isEssential);
    const amps = (phase: 'landing' | 'sourceFailed'): number[] =>
      essential.map((load) => currentA(load, phase, electrical.system));
    const found = batteryEndurance(electrical);
    return {
      given: {
        I_s: [found?.stretches[1]?.loadA ?? Number.NaN, 'A'],
        ...numbered('a', amps('landing'), 'A'),
        ...numbered('b', amps('sourceFailed'), 'A'),
      },
      steps: [
        sum(
          `I_l = \\max(I_s, ${summed(essential.length, (i) => `\\max(a_${i}, b_${i})`)})`,
          found?.stretches[2]?.loadA ?? Number.NaN,
          'A',
        ),
      ],
    };
  },
};

export const electricalLoad: Topic = {
  id: 'electrical-load',
  title: 'Electrical load',
  formulas: [current, loads, output, watched, endurance, landingLoad],
};
