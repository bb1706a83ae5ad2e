import { ballastToAddKg, massToRemoveKg } from '../../worker/core/calc/mass/ballast.ts';
import { massToMoveKg, shiftByMovedMm } from '../../worker/core/calc/mass/shift.ts';
import { BALANCE_TOPICS } from '../published/balance-cases.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

const SHIFT = '\\Delta x = \\frac{m \\cdot d}{M}';

const byMoving: Formula = {
  id: 'shift-by-a-moved-mass',
  title: 'Shift by a mass moved on board',
  tex: [SHIFT],
  symbols: [
    ['\\Delta x', 'shift of the centre of gravity, aft positive', 'mm'],
    ['m', 'mass that is moved', 'kg'],
    ['d', 'its way, aft positive', 'mm'],
    ['M', 'total mass, which does not change', 'kg'],
  ],
  by: [shiftByMovedMm],
  holds: 'Sideways and for heights in the same way.',
  example() {
    const input = inputOf<Parameters<(typeof BALANCE_TOPICS)['shift-by-moving']>[0]>('HE-09');
    return {
      case: 'HE-09',
      given: { m: [input.moved, 'kg'], d: [input.distance, 'in'], M: [input.total, 'kg'] },
      steps: [sum(SHIFT, BALANCE_TOPICS['shift-by-moving'](input).shift, 'in', 'shift')],
    };
  },
};

const MOVED = 'm = \\frac{M \\cdot \\Delta x}{d}';

const toMove: Formula = {
  id: 'mass-to-move',
  title: 'Mass to move for a shift',
  tex: [MOVED],
  symbols: [
    ['m', 'mass to move', 'kg'],
    ['M', 'total mass, which does not change', 'kg'],
    ['\\Delta x', 'wanted shift, aft positive', 'mm'],
    ['d', 'way of the mass, aft positive', 'mm'],
  ],
  by: [massToMoveKg],
  holds: 'The divisor is the distance moved. No mass is found if the way goes to the other side.',
  example() {
    const input = inputOf<Parameters<(typeof BALANCE_TOPICS)['mass-to-move']>[0]>('SH-01');
    return {
      case: 'SH-01',
      given: { M: [input.total, 'kg'], '\\Delta x': [input.shift, 'm'], d: [input.distance, 'm'] },
      steps: [sum(MOVED, BALANCE_TOPICS['mass-to-move'](input).mass, 'kg', 'mass')],
    };
  },
};

const SYMBOLS = [
  ['M', 'mass before', 'kg'],
  ['x_1', 'arm of the centre of gravity before', 'mm'],
  ['x_2', 'wanted arm of the centre of gravity', 'mm'],
  ['x', 'arm of the place', 'mm'],
] as const;

const ADDED = 'm = \\frac{M \\cdot (x_2 - x_1)}{x - x_2}';

const toAdd: Formula = {
  id: 'ballast-to-add',
  title: 'Ballast to add',
  tex: [ADDED],
  symbols: [['m', 'ballast', 'kg'], ...SYMBOLS],
  by: [ballastToAddKg],
  holds:
    'The divisor is the distance from the place to the new centre of gravity, because ballast changes the total. No ballast is found on the wrong side of it.',
  example() {
    const input = inputOf<Parameters<(typeof BALANCE_TOPICS)['ballast-to-add']>[0]>('SH-07');
    return {
      case: 'SH-07',
      given: { M: [input.mass, 'lb'], x_1: [input.arm, 'in'], x_2: [input.wanted, 'in'], x: [input.place, 'in'] },
      steps: [sum(ADDED, BALANCE_TOPICS['ballast-to-add'](input).mass, 'lb', 'mass')],
    };
  },
};

const REMOVED = 'm = \\frac{M \\cdot (x_2 - x_1)}{x_2 - x}';

const toRemove: Formula = {
  id: 'mass-to-remove',
  title: 'Mass to remove',
  tex: [REMOVED],
  symbols: [['m', 'mass to remove', 'kg'], ...SYMBOLS],
  by: [massToRemoveKg],
  holds: 'The divisor is again the distance to the new centre of gravity. The whole aircraft is never removed.',
  example() {
    const input = inputOf<Parameters<(typeof BALANCE_TOPICS)['mass-to-remove']>[0]>('SH-02');
    return {
      case: 'SH-02',
      given: { M: [input.mass, 'kg'], x_1: [input.arm, 'm'], x_2: [input.wanted, 'm'], x: [input.place, 'm'] },
      steps: [sum(REMOVED, BALANCE_TOPICS['mass-to-remove'](input).mass, 'kg', 'mass')],
    };
  },
};

export const shifts: Topic = {
  id: 'shifts-and-ballast',
  title: 'Shifts and ballast',
  formulas: [byMoving, toMove, toAdd, toRemove],
};
