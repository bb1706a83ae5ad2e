import { atArm, cgMm, minus, total } from '../../worker/core/calc/mass/mass-moment.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { shares } from './shares.ts';
import { numbered, sum, summed } from './steps.ts';

const totals: Formula = {
  id: 'totals',
  title: 'Totals of mass and moment',
  tex: ['m = \\sum_i m_i', 'M = \\sum_i m_i \\cdot x_i'],
  symbols: [
    ['m', 'total mass', 'kg'],
    ['M', 'total moment about the datum', 'kg·mm'],
    ['m_i', 'each mass', 'kg'],
    ['x_i', 'its arm, aft of the datum positive', 'mm'],
  ],
  by: [atArm, total],
  holds: 'In any one system of units. Masses add and moments add; arms do not.',
  example() {
    const { parts } = inputOf<{ parts: { mass: number; arm: number }[] }>('WB-25');
    const whole = total(parts.map(({ mass, arm }) => atArm(mass, arm)));
    const masses = parts.map(({ mass }) => mass);
    const arms = parts.map(({ arm }) => arm);
    return {
      case: 'WB-25',
      given: { ...numbered('m', masses, 'lb'), ...numbered('x', arms, 'ft') },
      steps: [
        sum(`m = ${summed(parts.length, (i) => `m_${i}`)}`, whole.massKg, 'lb', 'mass'),
        sum(`M = ${summed(parts.length, (i) => `m_${i} \\cdot x_${i}`)}`, whole.momentKgMm, 'lb·ft', 'moment'),
      ],
    };
  },
};

const centreOfGravity: Formula = {
  id: 'centre-of-gravity',
  title: 'Centre of gravity',
  tex: ['x = \\frac{M}{m}'],
  symbols: [
    ['x', 'arm of the centre of gravity', 'mm'],
    ['M', 'total moment', 'kg·mm'],
    ['m', 'total mass', 'kg'],
  ],
  by: [cgMm],
  holds: 'Where there is a mass: below a gram nothing is taken to have a centre of gravity.',
  example() {
    const { parts } = inputOf<{ parts: { mass: number; arm: number }[] }>('WB-61');
    const whole = total(parts.map(({ mass, arm }) => atArm(mass, arm)));
    return {
      case: 'WB-61',
      given: { M: [whole.momentKgMm, ''], m: [whole.massKg, ''] },
      steps: [sum('x = \\frac{M}{m}', cgMm(whole), '', 'arm')],
    };
  },
};

const difference: Formula = {
  id: 'change-between-two-conditions',
  title: 'Change between two conditions',
  tex: ['\\Delta m = m_2 - m_1', '\\Delta M = M_2 - M_1'],
  symbols: [
    ['\\Delta m', 'change of mass', 'kg'],
    ['\\Delta M', 'change of moment', 'kg·mm'],
    ['m_1', 'mass before', 'kg'],
    ['m_2', 'mass after', 'kg'],
    ['M_1', 'moment before', 'kg·mm'],
    ['M_2', 'moment after', 'kg·mm'],
  ],
  by: [minus],
  holds: 'Always. The history of the empty mass prints it for every step.',
  example() {
    const [before, after] = [atArm(322.1, 1645), atArm(328.3, 1644)];
    const change = minus(after, before);
    return {
      given: {
        m_1: [before.massKg, 'kg'],
        m_2: [after.massKg, 'kg'],
        M_1: [before.momentKgMm, 'kg·mm'],
        M_2: [after.momentKgMm, 'kg·mm'],
      },
      steps: [
        sum('\\Delta m = m_2 - m_1', change.massKg, 'kg'),
        sum('\\Delta M = M_2 - M_1', change.momentKgMm, 'kg·mm'),
      ],
    };
  },
};

export const massAndMoment: Topic = {
  id: 'mass-and-moment',
  title: 'Mass and moment',
  formulas: [totals, centreOfGravity, difference, ...shares],
};
