import { boundary } from '../../worker/core/calc/loading/boundary.ts';
import { loadingExtremes } from '../../worker/core/calc/loading/extremes.ts';
import { boundsOf, loadSpaces, loadStationsOf } from '../../worker/core/calc/loading/load-space.ts';
import { cheapestLine } from '../../worker/core/calc/loading/parametric.ts';
import { extremeCase } from '../published/loading-case.ts';
import { inputOf } from './case-of.ts';
import { DEMO, demoWeighing } from './demo.ts';
import type { Formula } from './formula.ts';
import { sum } from './steps.ts';

const ROOM = 'f = \\min(l, m_{\\max} - m, g - a)';

const room: Formula = {
  id: 'room-on-a-station',
  title: 'What one station still takes',
  tex: [ROOM],
  symbols: [
    ['f', 'mass that the station is filled with', 'kg'],
    ['l', 'what it may take above its least mass', 'kg'],
    ['m_{\\max}', 'maximum mass of the aircraft', 'kg'],
    ['m', 'mass so far', 'kg'],
    [
      'g',
      'maximum of a group that the station belongs to; maximum zero-fuel mass less empty mass for all seats and baggage',
      'kg',
    ],
    ['a', 'what is aboard of that group so far', 'kg'],
  ],
  by: [boundary, loadSpaces, boundsOf],
  holds:
    'For groups that lie within each other or apart; groups that cross are solved as a linear programme. A passenger seat counts as any mass from nothing to its maximum.',
  example() {
    const { empty } = demoWeighing().result;
    const [space] = loadSpaces(DEMO.aircraft, { empty, leastPilotKg: 55 });
    const corners = space ? boundary(space, 'aft') : [];
    const at = corners.findIndex(({ load }) => (load['right-seat'] ?? 0) > 0);
    const [before, after] = [corners[at - 1], corners[at]];
    const right = loadStationsOf(DEMO.aircraft).find(({ id }) => id === 'right-seat');
    const pilotKg = before?.load['left-seat'] ?? Number.NaN;
    return {
      given: {
        l: [right ? boundsOf(right, 55).maximumKg : Number.NaN, 'kg'],
        'm_{\\max}': [DEMO.aircraft.maximumMassKg, 'kg'],
        m: [before?.massKg ?? Number.NaN, 'kg'],
        g: [DEMO.aircraft.loadingLimits?.[0]?.maximumMassKg ?? Number.NaN, 'kg'],
        a: [pilotKg, 'kg'],
      },
      steps: [sum(ROOM, after?.load['right-seat'] ?? Number.NaN, 'kg')],
    };
  },
};

const GAIN = 'z = \\lambda \\cdot (x_1 + x_2) - (c_1 \\cdot x_1 + c_2 \\cdot x_2)';

const crossing: Formula = {
  id: 'limits-that-cross',
  title: 'Loadings where limits cross',
  tex: ['z = \\lambda \\cdot \\sum_j x_j - \\sum_j c_j \\cdot x_j'],
  symbols: [
    ['z', 'value of a loading, made as great as the limits allow', 'kg·mm'],
    ['\\lambda', 'value of one kilogram more, from very small to very great', 'mm'],
    ['x_j', 'mass on a station', 'kg'],
    ['c_j', 'its arm for the foremost loading, the negative of its arm for the rearmost', 'mm'],
  ],
  by: [cheapestLine],
  holds:
    'A linear programme, solved by the simplex method: each step goes to the next corner: at each mass, the one with the lowest moment. The example has two stations of 60 kg and 50 kg at 100 mm and 300 mm, together at most 80 kg.',
  example() {
    const corners = cheapestLine({
      upper: [60, 50],
      costs: [100, 300],
      rows: [{ coefficients: [1, 1], bound: 80 }],
    });
    const [first = 0, second = 0] = corners.at(-1) ?? [];
    return {
      given: {
        '\\lambda': [400, 'mm'],
        x_1: [first, 'kg'],
        x_2: [second, 'kg'],
        c_1: [100, 'mm'],
        c_2: [300, 'mm'],
      },
      steps: [sum(GAIN, 400 * (first + second) - (100 * first + 300 * second), 'kg·mm')],
    };
  },
};

const extremes: Formula = {
  id: 'extreme-loadings',
  title: 'Foremost and rearmost legal loading',
  tex: ['m = m_0 + \\sum_j f_j', 'M = M_0 + \\sum_j f_j \\cdot x_j', 'x = \\frac{M}{m}'],
  symbols: [
    ['m', 'mass of the loading', 'kg'],
    ['M', 'its moment', 'kg·mm'],
    ['x', 'arm of its centre of gravity', 'mm'],
    ['m_0', 'empty mass and the least masses that must be aboard', 'kg'],
    ['M_0', 'moment of these', 'kg·mm'],
    ['f_j', 'what each station is filled with, the rearmost arm first, or the foremost', 'kg'],
    ['x_j', 'arm of the station', 'mm'],
  ],
  by: [loadingExtremes, boundary],
  holds:
    'Exact: of all loadings with the same mass, filling in the order of arms has the greatest moment, or the least. Between two steps of the filling the centre of gravity moves one way only, so the extreme is at a step.',
  example() {
    const input = inputOf<Parameters<typeof extremeCase>[0]>('WB-33');
    const { mass = Number.NaN, moment = Number.NaN, arm = Number.NaN } = extremeCase(input);
    const [pilot, rear, baggage] = input.seats;
    const [tank] = input.tanks;
    const pilotLb = pilot?.maximum ?? Number.NaN;
    return {
      case: 'WB-33',
      given: {
        m_0: [input.empty.mass + pilotLb, 'lb'],
        M_0: [input.empty.moment + pilotLb * (pilot?.arm ?? Number.NaN), 'lb·in'],
        f_1: [baggage?.maximum ?? Number.NaN, 'lb'],
        f_2: [rear?.maximum ?? Number.NaN, 'lb'],
        f_3: [(tank?.capacity ?? Number.NaN) * (tank?.density ?? Number.NaN), 'lb'],
        x_1: [baggage?.arm ?? Number.NaN, 'in'],
        x_2: [rear?.arm ?? Number.NaN, 'in'],
        x_3: [tank?.arm ?? Number.NaN, 'in'],
      },
      steps: [
        sum('m = m_0 + f_1 + f_2 + f_3', mass, 'lb', 'mass'),
        sum('M = M_0 + f_1 \\cdot x_1 + f_2 \\cdot x_2 + f_3 \\cdot x_3', moment, 'lb·in', 'moment'),
        sum('x = \\frac{M}{m}', arm, 'in', 'arm'),
      ],
    };
  },
};

export const adverse: readonly Formula[] = [room, crossing, extremes];
