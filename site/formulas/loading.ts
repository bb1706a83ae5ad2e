import { envelopeIn } from '../../worker/core/calc/loading/aircraft-envelope.ts';
import { armOn, envelopeOf } from '../../worker/core/calc/loading/envelope.ts';
import { loadingOf } from '../../worker/core/calc/loading/loading-of.ts';
import { loadingCase } from '../published/loading-case.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import { adverse } from './extreme-loadings.ts';
import type { Formula, Topic } from './formula.ts';
import { margin } from './margin.ts';
import { sum } from './steps.ts';

const LOADED = 'm = m_0 + \\sum_i l_i';
const LOADED_MOMENT = 'M = M_0 + \\sum_i l_i \\cdot x_i';

const loaded: Formula = {
  id: 'a-loading',
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
  by: [envelopeOf, envelopeIn, armOn],
  holds:
    'For envelopes that every level of mass crosses twice. Above the highest corner a loading counts as outside; below the lowest, too, unless that edge is only where the drawing ends.',
  example() {
    const piece = envelopeIn(DEMO.aircraft)?.forward[1];
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

export const loading: Topic = {
  id: 'loading',
  title: 'Loading and envelope',
  formulas: [loaded, limit, margin, ...adverse],
};
