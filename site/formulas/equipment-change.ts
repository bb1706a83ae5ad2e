import { configurationEmpties } from '../../worker/core/calc/configurations/configuration-empty.ts';
import { baselineEmpty } from '../../worker/core/calc/mass/baseline.ts';
import { equipmentChange } from '../../worker/core/calc/mass/equipment-change.ts';
import { predictEmpty } from '../../worker/core/calc/mass/prediction.ts';
import type { Configuration } from '../../worker/core/record/visit.ts';
import { type EquipmentInput, equipmentChangeCase } from '../published/equipment-change-case.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { revised } from './revised-schedule.ts';
import { numbered, sum, summed } from './steps.ts';

const NEW_MASS = 'm = m_0 + \\Delta m';
const NEW_MOMENT = 'M = m_0 \\cdot x_0 + \\Delta M';

const change: Formula = {
  id: 'equipment-change',
  title: 'Items put in and taken out',
  tex: ['\\Delta m = \\sum_i m_i', '\\Delta M = \\sum_i m_i \\cdot x_i', NEW_MASS, NEW_MOMENT, 'x = \\frac{M}{m}'],
  symbols: [
    ['\\Delta m', 'change of mass', 'kg'],
    ['\\Delta M', 'change of moment', 'kg·mm'],
    ['m_i', 'mass of each item, negative where it is taken out', 'kg'],
    ['x_i', 'its arm', 'mm'],
    ['m_0', 'empty mass before', 'kg'],
    ['x_0', 'arm of the empty centre of gravity before', 'mm'],
    ['m', 'empty mass after', 'kg'],
    ['M', 'empty moment after', 'kg·mm'],
    ['x', 'arm of the empty centre of gravity after', 'mm'],
  ],
  by: [baselineEmpty, equipmentChange, predictEmpty],
  holds:
    'An item taken out counts at the arm that the list had, with the mass weighed on removal where there is one. An item that was listed wrongly counts the difference. The moment of the papers is preferred to their arm where they print both.',
  example() {
    const { installed = [], removed = [], empty, ...input } = inputOf<EquipmentInput>('WB-55');
    const items = [...removed.map(({ mass, arm }) => ({ mass: -mass, arm })), ...installed];
    const all = equipmentChangeCase({ installed, removed, empty, ...input });
    const of = (quantity: string): number => all[quantity] ?? Number.NaN;
    return {
      case: 'WB-55',
      given: {
        ...numbered(
          'm',
          items.map(({ mass }) => mass),
          'lb',
        ),
        ...numbered(
          'x',
          items.map(({ arm }) => arm),
          'in',
        ),
        m_0: [empty.mass, 'lb'],
        x_0: [empty.arm ?? Number.NaN, 'in'],
      },
      steps: [
        sum(`\\Delta m = ${summed(items.length, (i) => `m_${i}`)}`, of('changeMass'), 'lb', 'changeMass'),
        sum(
          `\\Delta M = ${summed(items.length, (i) => `m_${i} \\cdot x_${i}`)}`,
          of('changeMoment'),
          'lb·in',
          'changeMoment',
        ),
        sum(NEW_MASS, of('mass'), 'lb', 'mass'),
        sum(NEW_MOMENT, of('moment'), 'lb·in', 'moment'),
        sum('x = \\frac{M}{m}', of('arm'), 'in', 'arm'),
      ],
    };
  },
};

const MOVED = '\\Delta M = m_i \\cdot (x_2 - x_1)';
const SHIFTED = '\\Delta x = \\frac{\\Delta M}{m}';

const relocation: Formula = {
  id: 'relocation',
  title: 'An item moved',
  tex: [MOVED, SHIFTED],
  symbols: [
    ['\\Delta M', 'change of moment', 'kg·mm'],
    ['m_i', 'mass of the item', 'kg'],
    ['x_1', 'its arm before', 'mm'],
    ['x_2', 'its arm after', 'mm'],
    ['\\Delta x', 'shift of the empty centre of gravity', 'mm'],
    ['m', 'empty mass, which stays as it was', 'kg'],
  ],
  by: [equipmentChange, predictEmpty],
  holds: 'For an item on the list. Its mass and the uncertainty of it stay where they are, so they count nothing.',
  example() {
    const input = inputOf<EquipmentInput>('WB-59');
    const [moved] = input.relocated ?? [];
    const { changeMoment = Number.NaN, shift = Number.NaN } = equipmentChangeCase(input);
    return {
      case: 'WB-59',
      given: {
        m_i: [moved?.mass ?? Number.NaN, 'lb'],
        x_1: [moved?.arm ?? Number.NaN, 'in'],
        x_2: [moved?.to ?? Number.NaN, 'in'],
        m: [input.empty.mass, 'lb'],
      },
      steps: [sum(MOVED, changeMoment, 'lb·in', 'changeMoment'), sum(SHIFTED, shift, 'in', 'shift')],
    };
  },
};

const KIT_MASS = 'm = m_0 - m_1 + m_2';
const KIT_MOMENT = 'M = m_0 \\cdot x_0 - m_1 \\cdot x_1 + m_2 \\cdot x_2';

const kit: Formula = {
  id: 'another-configuration',
  title: 'Empty mass of another configuration',
  tex: [KIT_MASS, KIT_MOMENT, 'x = \\frac{M}{m}'],
  symbols: [
    ['m_0', 'empty mass of the configuration that it follows from', 'kg'],
    ['x_0', 'its arm', 'mm'],
    ['m_1', 'mass that leaves', 'kg'],
    ['x_1', 'its arm', 'mm'],
    ['m_2', 'mass that comes', 'kg'],
    ['x_2', 'its arm', 'mm'],
    ['m', 'empty mass of the other configuration', 'kg'],
    ['M', 'its empty moment', 'kg·mm'],
    ['x', 'arm of its empty centre of gravity', 'mm'],
  ],
  by: [configurationEmpties],
  holds: 'For every item of the kit, and in the lateral axis with the lateral arms.',
  example() {
    const skis: Configuration = {
      id: 'skis',
      name: 'On skis',
      follows: {
        kit: [
          { kind: 'off', name: 'Wheels', massKg: 19, armMm: 100 },
          { kind: 'on', name: 'Skis', massKg: 32, armMm: 150 },
        ],
      },
    };
    const visit = { ...DEMO, aircraft: { ...DEMO.aircraft, configurations: [skis] } };
    const none = { along: equipmentChange({}), across: undefined };
    const [made] = configurationEmpties(visit, { massKg: 390, momentKgMm: 390 * 400 }, none);
    return {
      given: {
        m_0: [390, 'kg'],
        x_0: [400, 'mm'],
        m_1: [19, 'kg'],
        x_1: [100, 'mm'],
        m_2: [32, 'kg'],
        x_2: [150, 'mm'],
      },
      steps: [
        sum(KIT_MASS, made?.massKg ?? Number.NaN, 'kg'),
        sum(KIT_MOMENT, made?.momentKgMm ?? Number.NaN, 'kg·mm'),
        sum('x = \\frac{M}{m}', made?.armMm ?? Number.NaN, 'mm'),
      ],
    };
  },
};

export const equipment: Topic = {
  id: 'equipment',
  title: 'Equipment change',
  formulas: [change, relocation, kit, ...revised],
};
