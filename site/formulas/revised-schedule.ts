import { equipmentChange } from '../../worker/core/calc/mass/equipment-change.ts';
import { emptyMassHistory } from '../../worker/core/calc/mass/history.ts';
import { predictEmpty } from '../../worker/core/calc/mass/prediction.ts';
import { revisedSchedule } from '../../worker/core/calc/mass/schedule.ts';
import { visitChanging } from '../published/equipment-change-case.ts';
import { negligibleCase } from '../published/negligible-case.ts';
import { readVisit } from '../published/read-visit.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const NEGLIGIBLE = 's = \\frac{|x - x_0|}{c} \\cdot 100';

const negligible: Formula = {
  id: 'negligible-change',
  title: 'Negligible change',
  tex: ['t = \\sum_i |m_i|', NEGLIGIBLE],
  symbols: [
    ['t', 'masses of all changes together, none set off against another', 'kg'],
    ['m_i', 'mass of each change', 'kg'],
    ['s', 'shift of the empty centre of gravity in per cent of the chord', '%'],
    ['x_0', 'its arm before', 'mm'],
    ['x', 'its arm after', 'mm'],
    ['c', 'length of the mean aerodynamic chord', 'mm'],
  ],
  by: [equipmentChange, predictEmpty],
  holds:
    'Negligible where the mass is at most the limit of the regime and the shift is below it: 1 lb and 0.05 % for an empty mass under 5,000 lb (AC 43.13-1B, 10-2c). Without a chord nothing is negligible.',
  example() {
    const input = inputOf<Parameters<typeof negligibleCase>[0]>('NC-04');
    const { empty, mac = Number.NaN, installed } = input;
    const visit = visitChanging({ ...input, installed: [installed] });
    const after = predictEmpty(visit, equipmentChange(visit));
    const [before, now] = [after?.baseline.armMm ?? Number.NaN, after?.armMm ?? Number.NaN];
    const { isNegligible = Number.NaN } = negligibleCase(input);
    return {
      case: 'NC-04',
      given: {
        m_1: [installed.mass, 'lb'],
        x_0: [empty.arm ?? Number.NaN, 'in'],
        x: [now / 25.4, 'in'],
        c: [mac, 'in'],
      },
      steps: [
        sum('t = |m_1|', installed.mass, 'lb'),
        sum(NEGLIGIBLE, (Math.abs(now - before) / 25.4 / mac) * 100, '%'),
        said(isNegligible ? 'At most 1 lb, and below 0.05 %: negligible.' : 'Not negligible.', { isNegligible }),
      ],
    };
  },
};

const useful: Formula = {
  id: 'useful-load',
  title: 'Useful load, and steps of the history',
  tex: ['l = m_{\\max} - m', '\\Delta m = m - m_0'],
  symbols: [
    ['l', 'useful load', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m', 'empty mass of the new schedule', 'kg'],
    ['m_0', 'empty mass of the line before in the history', 'kg'],
    ['\\Delta m', 'step of the history', 'kg'],
  ],
  by: [revisedSchedule, emptyMassHistory],
  holds: 'The schedule takes the weighed condition where the visit weighed, else the computed one.',
  example() {
    const visit = readVisit('computed-only');
    const made = equipmentChange(visit);
    const schedule = revisedSchedule(visit, made, undefined, predictEmpty(visit, made));
    const [step, before] = [schedule?.history.at(-1), schedule?.history.at(-2)];
    return {
      given: {
        'm_{\\max}': [visit.aircraft.maximumMassKg, 'kg'],
        m: [schedule?.massKg ?? Number.NaN, 'kg'],
        m_0: [before?.massKg ?? Number.NaN, 'kg'],
      },
      steps: [
        sum('l = m_{\\max} - m', schedule?.usefulLoadKg ?? Number.NaN, 'kg'),
        sum('\\Delta m = m - m_0', step?.changeKg ?? Number.NaN, 'kg'),
      ],
    };
  },
};

export const revised: readonly Formula[] = [negligible, useful];
