import { factorOf } from '../../worker/core/units/quantity.ts';
import { roundForPrint, roundWithin } from '../../worker/core/units/rounding.ts';
import { TOPICS } from '../published/topics.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

const factors: Formula = {
  id: 'units',
  title: 'Units of the record',
  tex: ['q = v \\cdot k', 'k = k_m \\cdot k_x'],
  symbols: [
    ['q', 'value in kg, mm, l and what follows from them', ''],
    ['v', 'value in the units of the record', ''],
    ['k', 'factor; of a moment the product of two', ''],
    ['k_m', 'kilograms of a pound: 0.45359237, exact', 'kg'],
    ['k_x', 'millimetres of an inch: 25.4, exact', 'mm'],
  ],
  by: [factorOf],
  holds: 'Exact: a US gallon is 3.785411784 l, an imperial gallon 4.54609 l. Converted once, at the door.',
  example() {
    const units = { mass: 'lb', arm: 'in', volume: 'usgal' } as const;
    const factor = TOPICS.factor?.({ quantity: 'moment', units } as never).factor ?? Number.NaN;
    return {
      case: 'UN-17',
      given: { k_m: [factorOf('mass', units), ''], k_x: [factorOf('arm', units), ''], v: [100, 'lb·in'] },
      steps: [sum('k = k_m \\cdot k_x', factor, '', 'factor'), sum('q = v \\cdot k', 100 * factor, 'kg·mm')],
    };
  },
};

const ROUNDED = 'y = \\frac{\\left\\lfloor x \\cdot 10^n + 0.5 \\right\\rfloor}{10^n}';
const DOWN = 'y_u = \\frac{\\left\\lfloor x \\cdot 10^n \\right\\rfloor}{10^n}';

const rounding: Formula = {
  id: 'rounding',
  title: 'Rounding in print',
  tex: [ROUNDED, DOWN],
  symbols: [
    ['y', 'printed value', ''],
    ['y_u', 'printed value of a greatest limit', ''],
    ['x', 'computed value', ''],
    ['n', 'decimals', ''],
  ],
  by: [roundForPrint, roundWithin],
  holds:
    'Half away from zero, decided on the shortest decimal that names the number; negative values as their positive ones. A least limit is rounded up. Nothing is rounded before it is printed.',
  example: () => ({
    given: { x: [1322.7736, ''], n: [1, ''] },
    steps: [sum(ROUNDED, roundForPrint(1322.7736, 1)), sum(DOWN, roundWithin(1322.7736, 1, 'most'))],
  }),
};

export const unitsAndRounding: Topic = {
  id: 'units-and-rounding',
  title: 'Units and rounding',
  formulas: [factors, rounding],
};
