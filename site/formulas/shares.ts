import { armAtPercentMm, percentMac } from '../../worker/core/calc/mass/mac.ts';
import { interpolate } from '../../worker/core/calc/numbers/interpolate.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { sum } from './steps.ts';

const MAC = 'p = \\frac{x - x_{\\mathrm{LE}}}{c} \\cdot 100';

const percent: Formula = {
  id: 'per-cent-mac',
  title: 'Per cent of the mean aerodynamic chord',
  tex: [MAC],
  symbols: [
    ['p', 'centre of gravity in per cent of the chord', '%'],
    ['x', 'arm of the centre of gravity', 'mm'],
    ['x_{\\mathrm{LE}}', 'arm of the leading edge of the chord', 'mm'],
    ['c', 'length of the chord', 'mm'],
  ],
  by: [percentMac],
  holds: 'Where the record gives the chord.',
  example() {
    const { leadingEdge, length, arm } = inputOf<Record<'leadingEdge' | 'length' | 'arm', number>>('WB-60');
    const result = percentMac({ leadingEdgeArmMm: leadingEdge, lengthMm: length }, arm) ?? Number.NaN;
    return {
      case: 'WB-60',
      given: { x: [arm, ''], 'x_{\\mathrm{LE}}': [leadingEdge, ''], c: [length, ''] },
      steps: [sum(MAC, result, '%', 'percent')],
    };
  },
};

const PLACE = 'x = x_{\\mathrm{LE}} + \\frac{p}{100} \\cdot c';

const ofChord: Formula = {
  id: 'arm-of-per-cent-mac',
  title: 'Arm of a place given in per cent of the chord',
  tex: [PLACE],
  symbols: [
    ['x', 'arm', 'mm'],
    ['x_{\\mathrm{LE}}', 'arm of the leading edge of the chord', 'mm'],
    ['p', 'place in per cent of the chord', '%'],
    ['c', 'length of the chord', 'mm'],
  ],
  by: [armAtPercentMm],
  holds: 'The inverse of the formula above.',
  example: () => ({
    given: { 'x_{\\mathrm{LE}}': [1440, 'mm'], p: [25, '%'], c: [620, 'mm'] },
    steps: [sum(PLACE, armAtPercentMm({ leadingEdgeArmMm: 1440, lengthMm: 620 }, 25), 'mm')],
  }),
};

const LINE = 'y = y_1 + \\frac{x - x_1}{x_2 - x_1} \\cdot (y_2 - y_1)';

const interpolation: Formula = {
  id: 'interpolation',
  title: 'Between two lines of a table',
  tex: [LINE],
  symbols: [
    ['y', 'value looked for', ''],
    ['x', 'place in the table', ''],
    ['x_1', 'place of the line before', ''],
    ['x_2', 'place of the line after', ''],
    ['y_1', 'value of the line before', ''],
    ['y_2', 'value of the line after', ''],
  ],
  by: [interpolate],
  holds:
    'Where the table is given as straight between its lines: certificates of scales, arms of fuel, output of alternators, tolerances of altimeters. Before the first and after the last line that line’s value holds.',
  example() {
    const table = [
      [20, 1768],
      [50, 1779],
    ] as const;
    const result = interpolate(
      table,
      32,
      ([x]) => x,
      ([, y]) => y,
    );
    return {
      given: { x: [32, 'l'], x_1: [20, 'l'], x_2: [50, 'l'], y_1: [1768, 'mm'], y_2: [1779, 'mm'] },
      steps: [sum(LINE, result, 'mm')],
    };
  },
};

export const shares: readonly Formula[] = [percent, ofChord, interpolation];
