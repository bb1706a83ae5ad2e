import { SURVEILLANCE_TOPICS } from '../../tests/published/surveillance-cases.ts';
import { altimeterFigures } from '../../worker/calc/surveillance/altimeter.ts';
import {
  barometricDifferenceFt,
  frictionToleranceFt,
  scaleToleranceFt,
} from '../../worker/calc/surveillance/altimeter-limits.ts';
import { limited, limitedDifference } from '../../worker/calc/surveillance/limited.ts';
import { surveillanceResults } from '../../worker/calc/surveillance/results.ts';
import { staticSystemResult } from '../../worker/calc/surveillance/static-system.ts';
import { transponderFigures } from '../../worker/calc/surveillance/transponder-limits.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { said, sum } from './steps.ts';

const TOLERANCE = 't = t_1 + \\frac{h - h_1}{h_2 - h_1} \\cdot (t_2 - t_1)';

const tolerance: Formula = {
  id: 'altimeter-tolerance',
  title: 'Tolerance of an altimeter between two rows',
  tex: [TOLERANCE],
  symbols: [
    ['t', 'tolerance of the scale error, and of the friction in the same way', 'ft'],
    ['h', 'altitude', 'ft'],
    ['h_1', 'altitude of the row below', 'ft'],
    ['h_2', 'altitude of the row above', 'ft'],
    ['t_1', 'tolerance of the row below', 'ft'],
    ['t_2', 'tolerance of the row above', 'ft'],
  ],
  by: [scaleToleranceFt, frictionToleranceFt],
  holds: 'The tables give rows alone; the straight line between them is our reading.',
  example() {
    const [at4000, at6000] = [scaleToleranceFt(4000), scaleToleranceFt(6000)];
    return {
      case: 'RG-01',
      given: { h: [5000, 'ft'], h_1: [4000, 'ft'], h_2: [6000, 'ft'], t_1: [at4000, 'ft'], t_2: [at6000, 'ft'] },
      steps: [
        said(`Rows of the table: ±${at4000} ft at 4000 ft, ±${at6000} ft at 6000 ft.`, { at4000, at6000 }),
        sum(TOLERANCE, scaleToleranceFt(5000), 'ft'),
        said(`The friction at 5000 ft may be ${frictionToleranceFt(5000)} ft.`),
      ],
    };
  },
};

const SETTING = 'p = \\frac{q}{33.86389}';
const DIFFERENCE = 'd = d_1 + \\frac{p - p_1}{p_2 - p_1} \\cdot (d_2 - d_1)';

const barometric: Formula = {
  id: 'barometric-scale',
  title: 'What the barometric scale moves the reading',
  tex: [SETTING, DIFFERENCE],
  symbols: [
    ['p', 'pressure set, in inches of mercury', 'inHg'],
    ['q', 'pressure set', 'hPa'],
    ['d', 'difference of the reading from that at 29.92 inHg', 'ft'],
    ['p_1', 'pressure of the row below', 'inHg'],
    ['p_2', 'pressure of the row above', 'inHg'],
    ['d_1', 'difference of the row below', 'ft'],
    ['d_2', 'difference of the row above', 'ft'],
  ],
  by: [barometricDifferenceFt],
  holds: 'The straight line misses the curve of the standard atmosphere by 1.2 ft at most. The tolerance is 25 ft.',
  example() {
    const of = (inHg: number): number => barometricDifferenceFt(inHg * 33.863_89);
    const [low, high] = [of(29.5), of(29.92)];
    return {
      case: 'RG-04a',
      given: { q: [1005, 'hPa'], p_1: [29.5, 'inHg'], p_2: [29.92, 'inHg'], d_1: [low, 'ft'], d_2: [high, 'ft'] },
      steps: [
        sum(SETTING, 1005 / 33.863_89, 'inHg'),
        sum(DIFFERENCE, barometricDifferenceFt(1005), 'ft'),
        said(`Rows of the table: ${low.toFixed(0).replace('-', '−')} ft at 29.50, ${high.toFixed(0)} ft at 29.92.`, {
          'at29.5': low,
          'at29.92': high,
        }),
      ],
    };
  },
};

const within: Formula = {
  id: 'figure-within-limits',
  title: 'A figure against its tolerance',
  tex: ['e = r - s', '|e| \\leq t'],
  symbols: [
    ['e', 'error', 'ft'],
    ['r', 'what was read: altimeter, encoder, falling reading, difference of the barometric scale', 'ft'],
    ['s', 'what it is held against: true altitude, altimeter, rising reading, table', 'ft'],
    ['t', 'tolerance; for encoder against altimeter 125 ft', 'ft'],
  ],
  by: [altimeterFigures, limitedDifference, surveillanceResults],
  holds: 'Both ends count as within.',
  example() {
    const input = inputOf<{ encoderDifferenceFt: number }>('RG-05a');
    const { isWithin } = SURVEILLANCE_TOPICS.altimetry(input);
    const read = 5000 + input.encoderDifferenceFt;
    return {
      case: 'RG-05a',
      given: { r: [read, 'ft'], s: [5000, 'ft'] },
      steps: [
        sum('e = r - s', limitedDifference('Encoder', { read, against: 5000 }, 'ft', 125).value, 'ft'),
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

const MOST = 's_2 = s + a + c';
const LEAST = 's_1 = s - a';

const transponder: Formula = {
  id: 'transponder-limits',
  title: 'Limits of a transponder',
  tex: [LEAST, MOST, '|f - 1090| \\leq b', 'P_1 \\leq P \\leq 27'],
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
    const { least = Number.NaN, most = Number.NaN } = all.find(({ name }) => name === 'Sensitivity') ?? {};
    return {
      case: 'RG-09d',
      given: { s: [-74, 'dBm'], a: [3, 'dB'], c: [3, 'dB'] },
      steps: [
        sum(LEAST, least, 'dBm'),
        sum(MOST, most, 'dBm'),
        said(`−68 dBm is ${isWithin ? 'within' : 'outside'}.`, { isWithin }),
      ],
    };
  },
};

export const airData: Topic = {
  id: 'air-data',
  title: 'Altimeter, static system and transponder',
  formulas: [tolerance, barometric, within, leak, transponder],
};
