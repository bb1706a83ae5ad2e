import { altimeterFigures } from '../../worker/core/calc/surveillance/altimeter.ts';
import { limited, limitedDifference } from '../../worker/core/calc/surveillance/limited.ts';
import { pitotFigures } from '../../worker/core/calc/surveillance/pitot-system.ts';
import { surveillanceResults } from '../../worker/core/calc/surveillance/results.ts';
import { staticSystemResult } from '../../worker/core/calc/surveillance/static-system.ts';
import { transponderFigures } from '../../worker/core/calc/surveillance/transponder-limits.ts';
import { SURVEILLANCE_TOPICS } from '../published/surveillance-cases.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { tables } from './pressure-tables.ts';
import { said, sum } from './steps.ts';

const within: Formula = {
  id: 'figure-within-limits',
  title: 'A figure against its tolerance',
  tex: ['e = r - s', '|e| \\leq t'],
  symbols: [
    ['e', 'error', 'as r'],
    [
      'r',
      'what was read: altimeter, encoder, falling reading, difference of the barometric scale, airspeed',
      'ft, or the unit of the airspeed',
    ],
    ['s', 'what it is held against: true altitude, altimeter, rising reading, table, airspeed of the test set', 'as r'],
    ['t', 'tolerance; for encoder against altimeter 125 ft', 'as r'],
  ],
  by: [altimeterFigures, pitotFigures, limitedDifference, surveillanceResults],
  holds: 'Both ends count as within.',
  example() {
    const input = inputOf<{ encoderDifferenceFt: number }>('RG-05a');
    const { isWithin } = SURVEILLANCE_TOPICS.altimetry(input);
    const read = 5000 + input.encoderDifferenceFt;
    return {
      case: 'RG-05a',
      given: { r: [read, 'ft'], s: [5000, 'ft'] },
      steps: [
        sum('e = r - s', limitedDifference('scale-error', { read, against: 5000 }, 'ft', 125).value, 'ft'),
        said(isWithin ? 'Not more than 125 ft: within.' : 'More than 125 ft: outside.', { isWithin }),
      ],
    };
  },
};

const leak: Formula = {
  id: 'static-leak',
  title: 'Leak of the static system',
  tex: ['\\Delta h \\geq 900', 'l \\leq 100'],
  symbols: [
    ['\\Delta h', 'altitude by which the system was raised above the aerodrome', 'ft'],
    ['l', 'loss in one minute', 'ft'],
  ],
  by: [staticSystemResult, limited],
  holds:
    'Aeroplanes without a pressurised cabin. About an inch of mercury is asked for, or 1,000 ft; an inch is 925 ft at sea level.',
  example() {
    const { raisedFt, lossFt } = inputOf<{ raisedFt: number; lossFt: number }>('RG-16a');
    const { isWithin } = SURVEILLANCE_TOPICS['static-system']({ raisedFt, lossFt });
    return {
      case: 'RG-16a',
      given: { '\\Delta h': [raisedFt, 'ft'], l: [lossFt, 'ft'] },
      steps: [said(isWithin ? 'Both hold: within.' : 'One does not hold: outside.', { isWithin })],
    };
  },
};

const MAX = 's_2 = s + a + c';
const MIN = 's_1 = s - a';

const transponder: Formula = {
  id: 'transponder-limits',
  title: 'Limits of a transponder',
  tex: [MIN, MAX, '|f - 1090| \\leq b', 'P_1 \\leq P \\leq 27'],
  symbols: [
    ['s_1', 'least sensitivity', 'dBm'],
    ['s_2', 'greatest sensitivity', 'dBm'],
    ['s', 'middle: −73 for Mode A and C, −74 for Mode S', 'dBm'],
    ['a', 'to both sides of it: 4 for Mode A and C, 3 for Mode S', 'dB'],
    ['c', '3 for a portable test set that couples through the air, else 0', 'dB'],
    ['f', 'reply frequency', 'MHz'],
    ['b', '3; of Mode S classes 1A, 2A, 3A, 4, and of narrower ones, 1', 'MHz'],
    ['P', 'peak output', 'dBW'],
    ['P_1', '21 for the classes of high power, else 18.5', 'dBW'],
  ],
  by: [transponderFigures],
  holds:
    'Mode 3/A and Mode C may differ by 1 dB. At most 1 % of replies with P2 equal to P1, at least 90 % with P2 9 dB down; 20 dB between the antennas of a diversity pair.',
  example() {
    const input = inputOf<Parameters<(typeof SURVEILLANCE_TOPICS)['transponder']>[0]>('RG-09d');
    const { isWithin } = SURVEILLANCE_TOPICS.transponder(input);
    const figures = { replyFrequencyMhz: 1090, outputDbw: 22, sensitivityDbm: -68 };
    const replies = { sidelobeRepliesPercent: 0, wantedRepliesPercent: 100 };
    const all = transponderFigures({ ...figures, ...replies, class: 'S-2B', testSet: { isPortable: true } });
    const { least = Number.NaN, most = Number.NaN } = all.find(({ figure }) => figure === 'sensitivity') ?? {};
    return {
      case: 'RG-09d',
      given: { s: [-74, 'dBm'], a: [3, 'dB'], c: [3, 'dB'] },
      steps: [
        sum(MIN, least, 'dBm'),
        sum(MAX, most, 'dBm'),
        said(`−68 dBm is ${isWithin ? 'within' : 'outside'}.`, { isWithin }),
      ],
    };
  },
};

export const airData: Topic = {
  id: 'air-data',
  title: 'Altimeter, static system and transponder',
  formulas: [...tables, within, leak, transponder],
};
