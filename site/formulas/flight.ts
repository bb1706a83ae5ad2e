import { burnPathOf } from '../../worker/core/calc/loading/burn-path.ts';
import { checkLoading } from '../../worker/core/calc/loading/check.ts';
import { atArm } from '../../worker/core/calc/mass/mass-moment.ts';
import { fuelBurn } from '../published/fuel-burn.ts';
import { readVisit } from '../published/read-visit.ts';
import { inputOf } from './case-of.ts';
import { limiting } from './flight-limits.ts';
import type { Formula, Topic } from './formula.ts';
import { carried } from './payload.ts';
import { sum } from './steps.ts';

const plain = readVisit('computed-only').aircraft;

const AFTER = 'x_2 = \\frac{m \\cdot x_1 - f \\cdot x_f}{m - f}';
const SHIFT = '\\Delta x = x_2 - x_1';

const burn: Formula = {
  id: 'burn-path',
  title: 'Burning of fuel',
  tex: [AFTER, SHIFT],
  symbols: [
    ['x_1', 'arm of the centre of gravity before', 'mm'],
    ['x_2', 'arm of the centre of gravity after', 'mm'],
    ['\\Delta x', 'shift', 'mm'],
    ['m', 'mass before', 'kg'],
    ['f', 'fuel burnt', 'kg'],
    ['x_f', 'its arm', 'mm'],
  ],
  by: [burnPathOf],
  holds:
    'Tanks burn in the order of the record, those with the same number together in proportion to what they hold, each down to its unusable fuel. With a table of arms the way is followed in four steps.',
  example() {
    const input = inputOf<Parameters<typeof fuelBurn>[0]>('WB-24');
    const { shift = Number.NaN } = fuelBurn(input);
    const { loaded, fuel } = input;
    return {
      case: 'WB-24',
      given: { m: [loaded.mass, 'lb'], x_1: [loaded.arm, 'in'], f: [fuel.mass, 'lb'], x_f: [fuel.arm, 'in'] },
      steps: [sum(AFTER, loaded.arm + shift, 'in'), sum(SHIFT, shift, 'in', 'shift')],
    };
  },
};

const SHARE = 's = \\frac{b}{m_1 - m_2}';
const LANDING = 'M_b = M_1 + s \\cdot (M_2 - M_1)';

const landing: Formula = {
  id: 'landing',
  title: 'Where a planned burn ends',
  tex: [SHARE, LANDING],
  symbols: [
    ['s', 'share of a piece of the way', ''],
    ['b', 'fuel burnt on that piece', 'kg'],
    ['m_1', 'mass at its beginning', 'kg'],
    ['m_2', 'mass at its end', 'kg'],
    ['M_1', 'moment at its beginning', 'kg·mm'],
    ['M_2', 'moment at its end', 'kg·mm'],
    ['M_b', 'moment at the landing', 'kg·mm'],
  ],
  by: [checkLoading],
  holds:
    'Each piece of the way is straight in mass and moment. There is no landing where more is to be burnt than is aboard, and none is found inside with nothing left.',
  example() {
    const load = { 'left-seat': 80, tank: 24 };
    const { path, landing: there } = checkLoading(plain, atArm(277, 320), { load, burnKg: 9 });
    const [start, end] = [path[0], path.at(-1)];
    return {
      given: {
        b: [9, 'kg'],
        m_1: [start?.massKg ?? Number.NaN, 'kg'],
        m_2: [end?.massKg ?? Number.NaN, 'kg'],
        M_1: [start?.momentKgMm ?? Number.NaN, 'kg·mm'],
        M_2: [end?.momentKgMm ?? Number.NaN, 'kg·mm'],
      },
      steps: [sum(SHARE, 9 / 24), sum(LANDING, there?.momentKgMm ?? Number.NaN, 'kg·mm')],
    };
  },
};

export const flight: Topic = {
  id: 'flight',
  title: 'Flight and payload',
  formulas: [burn, landing, ...limiting, ...carried],
};
