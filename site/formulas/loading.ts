import { readVisit } from '../../tests/calc/read-visit.ts';
import { extremeCase, loadingCase } from '../../tests/published/loading-case.ts';
import { boundary } from '../../worker/calc/loading/boundary.ts';
import { armOn, envelopeOf } from '../../worker/calc/loading/envelope.ts';
import { loadingExtremes } from '../../worker/calc/loading/extremes.ts';
import { boundsOf, loadSpaces, loadStationsOf } from '../../worker/calc/loading/load-space.ts';
import { loadingOf } from '../../worker/calc/loading/loading-of.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { margin } from './margin.ts';
import { sum } from './steps.ts';
import { demoWeighing } from './weighing.ts';

const { aircraft } = readVisit('nose-wheel-full');

const LOADED = 'm = m_0 + \\sum_i l_i';
const LOADED_MOMENT = 'M = M_0 + \\sum_i l_i \\cdot x_i';

const loaded: Formula = {
  id: 'loading',
  title: 'A loading',
  tex: [LOADED, LOADED_MOMENT],
  symbols: [
    ['m', 'mass of the loaded aircraft', 'kg'],
    ['M', 'its moment', 'kg·mm'],
    ['m_0', 'empty mass', 'kg'],
    ['M_0', 'empty moment', 'kg·mm'],
    ['l_i', 'mass on each station; usable fuel in a tank', 'kg'],
    ['x_i', 'arm of the station', 'mm'],
  ],
  by: [loadingOf],
  holds: 'A station left out carries nothing. The arm of fuel follows the content where the tank has a table.',
  example() {
    const input = inputOf<Parameters<typeof loadingCase>[0]>('WB-32-sum');
    const { mass = Number.NaN, moment = Number.NaN } = loadingCase(input);
    const { pilot = Number.NaN, fuel = Number.NaN } = input.load;
    return {
      case: 'WB-32-sum',
      given: {
        m_0: [input.empty.mass, 'lb'],
        M_0: [input.empty.moment, 'lb·in'],
        l_1: [pilot, 'lb'],
        x_1: [input.seats[0]?.arm ?? Number.NaN, 'in'],
        l_2: [fuel, 'lb'],
        x_2: [input.tanks[0]?.arm ?? Number.NaN, 'in'],
      },
      steps: [
        sum('m = m_0 + l_1 + l_2', mass, 'lb', 'mass'),
        sum('M = M_0 + l_1 \\cdot x_1 + l_2 \\cdot x_2', moment, 'lb·in', 'moment'),
      ],
    };
  },
};

const LIMIT = 'x_f = x_1 + \\frac{m - m_1}{m_2 - m_1} \\cdot (x_2 - x_1)';

const limit: Formula = {
  id: 'limit-of-the-envelope',
  title: 'Limit of the envelope at a mass',
  tex: [LIMIT],
  symbols: [
    ['x_f', 'forward limit at a mass, and the aft limit in the same way', 'mm'],
    ['m', 'mass', 'kg'],
    ['m_1', 'mass at the lower corner of the side', 'kg'],
    ['m_2', 'mass at its upper corner', 'kg'],
    ['x_1', 'arm at the lower corner', 'mm'],
    ['x_2', 'arm at the upper corner', 'mm'],
  ],
  by: [envelopeOf, armOn],
  holds:
    'For envelopes that every level of mass crosses twice. Below the lowest and above the highest corner a loading counts as outside.',
  example() {
    const piece = envelopeOf(aircraft.envelope ?? [])?.forward[1];
    if (!piece) throw new Error('the demo aircraft has a forward limit of two pieces');
    return {
      given: {
        m: [554, 'kg'],
        m_1: [piece.fromKg, 'kg'],
        m_2: [piece.toKg, 'kg'],
        x_1: [piece.fromMm, 'mm'],
        x_2: [piece.toMm, 'mm'],
      },
      steps: [sum(LIMIT, armOn(piece, 554), 'mm')],
    };
  },
};

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
    'For groups that lie within each other or apart; groups that cross are refused. A passenger seat counts as any mass from nothing to its maximum.',
  example() {
    const { empty } = demoWeighing().result;
    const [space] = loadSpaces(aircraft, { empty, leastPilotKg: 55 });
    const corners = space ? boundary(space, 'aft') : [];
    const at = corners.findIndex(({ load }) => (load['right-seat'] ?? 0) > 0);
    const [before, after] = [corners[at - 1], corners[at]];
    const right = loadStationsOf(aircraft).find(({ id }) => id === 'right-seat');
    const pilotKg = before?.load['left-seat'] ?? Number.NaN;
    return {
      given: {
        l: [right ? boundsOf(right, 55).maximumKg : Number.NaN, 'kg'],
        'm_{\\max}': [aircraft.maximumMassKg, 'kg'],
        m: [before?.massKg ?? Number.NaN, 'kg'],
        g: [aircraft.loadingLimits?.[0]?.maximumMassKg ?? Number.NaN, 'kg'],
        a: [pilotKg, 'kg'],
      },
      steps: [sum(ROOM, after?.load['right-seat'] ?? Number.NaN, 'kg')],
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

export const loading: Topic = {
  id: 'loading',
  title: 'Loading and envelope',
  formulas: [loaded, limit, margin, room, extremes],
};
