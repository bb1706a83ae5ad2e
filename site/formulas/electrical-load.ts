import {
  chargingA,
  currentA,
  fitted,
  loadByPhase,
  REGULATED_V,
  sumOf,
} from '../../worker/core/calc/electrical/load.ts';
import { needsWatching } from '../../worker/core/calc/electrical/monitoring.ts';
import { inputOf } from './case-of.ts';
import { demoElectrical } from './demo.ts';
import { enduring } from './endurance.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, said, sum, summed } from './steps.ts';

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
    ['c_i', 'current of each continuous load, and of the battery while it is charged', 'A'],
    ['I_p', 'largest load', 'A'],
    ['p_i', 'current of each intermittent load', 'A'],
  ],
  by: [fitted, chargingA, sumOf, loadByPhase],
  holds: 'All intermittent loads are taken as on at once. The load before the visit is added up in the same way.',
  example() {
    const electrical = demoElectrical();
    const amps = (duty: 'continuous' | 'intermittent'): number[] =>
      fitted(electrical)
        .filter((load) => load.duty === duty)
        .map((load) => currentA(load, 'cruise', electrical.system))
        .filter((value) => value > 0);
    const continuous = [...amps('continuous'), chargingA(electrical, 'cruise')];
    const intermittent = amps('intermittent');
    const cruise = loadByPhase(electrical).find(({ phase }) => phase === 'cruise');
    return {
      given: { ...numbered('c', continuous, 'A'), ...numbered('p', intermittent, 'A') },
      steps: [
        sum(`I_c = ${summed(continuous.length, (i) => `c_${i}`)}`, cruise?.continuousA ?? Number.NaN, 'A'),
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

export const electricalLoad: Topic = {
  id: 'electrical-load',
  title: 'Electrical load',
  formulas: [current, loads, output, watched, ...enduring],
};
