import {
  barometricDifferenceFt,
  frictionToleranceFt,
  scaleToleranceFt,
} from '../../worker/core/calc/surveillance/altimeter-limits.ts';
import type { Formula } from './formula.ts';
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

export const tables: readonly Formula[] = [tolerance, barometric];
