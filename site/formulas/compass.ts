import { correctionOf } from '../../worker/core/calc/compass/coefficients.ts';
import { reduceSwing } from '../../worker/core/calc/compass/swing.ts';
import { COMPASS_TOPICS } from '../published/compass-cases.ts';
import { inputOf } from './case-of.ts';
import { coefficients } from './compass-coefficients.ts';
import { headings } from './compass-headings.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

type Readings = Record<'N' | 'E' | 'S' | 'W', [headingDeg: number, compassDeg: number]>;

const deviation: Formula = {
  id: 'deviation',
  title: 'Deviation',
  tex: ['d = h - c'],
  symbols: [
    ['d', 'deviation, east positive', '°'],
    ['h', 'magnetic heading', '°'],
    ['c', 'reading of the compass', '°'],
  ],
  by: [reduceSwing],
  holds:
    'By the shorter turn: a heading of 359° and a reading of 3° give −4°, not 356°. What a load moves the compass is found in the same way, on less off.',
  example() {
    const { readings } = inputOf<{ readings: Readings }>('CD-01');
    const { deviationE = Number.NaN } = COMPASS_TOPICS['correction-swing']({ readings });
    const [h, c] = readings.E;
    return {
      case: 'CD-01',
      given: { h: [h, '°'], c: [c, '°'] },
      steps: [sum('d = h - c', deviationE, '°', 'deviationE')],
    };
  },
};

const B = 'B = \\frac{d_E - d_W}{2}';
const C = 'C = \\frac{d_N - d_S}{2}';
const SOUTH = 'k_S = c_S - C';
const WEST = 'k_W = c_W - B';

const correction: Formula = {
  id: 'correction-swing',
  title: 'Correction swing',
  tex: [B, C, SOUTH, WEST],
  symbols: [
    ['B', 'coefficient B from the cardinal headings', '°'],
    ['C', 'coefficient C from them', '°'],
    ['d_N', 'deviation on north', '°'],
    ['d_E', 'deviation on east', '°'],
    ['d_S', 'deviation on south', '°'],
    ['d_W', 'deviation on west', '°'],
    ['c_S', 'reading of the compass on south', '°'],
    ['c_W', 'reading of the compass on west', '°'],
    ['k_S', 'what the compass is set to on south', '°'],
    ['k_W', 'what the compass is set to on west', '°'],
  ],
  by: [correctionOf],
  holds: 'Where all four cardinal headings were read within 5°.',
  example() {
    const { readings } = inputOf<{ readings: Readings }>('CD-01');
    const found = COMPASS_TOPICS['correction-swing']({ readings });
    const of = (name: string): number => (found as Record<string, number>)[name] ?? Number.NaN;
    return {
      case: 'CD-01',
      given: {
        d_N: [of('deviationN'), '°'],
        d_E: [of('deviationE'), '°'],
        d_S: [of('deviationS'), '°'],
        d_W: [of('deviationW'), '°'],
        c_S: [readings.S[1], '°'],
        c_W: [readings.W[1], '°'],
      },
      steps: [
        sum(B, of('B'), '°', 'B'),
        sum(C, of('C'), '°', 'C'),
        sum(SOUTH, of('setSouth'), '°', 'setSouth'),
        sum(WEST, of('setWest'), '°', 'setWest'),
      ],
    };
  },
};

export const compass: Topic = {
  id: 'compass',
  title: 'Compass',
  formulas: [deviation, correction, ...coefficients, ...headings],
};
