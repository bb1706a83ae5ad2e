import { usableFuelOf } from '../../worker/core/calc/loading/burn-path.ts';
import {
  fuelArmMm,
  fuelContent,
  fuelSteps,
  fullFuelKg,
  tanksOf,
  usableFuel,
} from '../../worker/core/calc/loading/fuel.ts';
import type { FuelStation } from '../../worker/core/record/visit.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

function demoTank(): FuelStation {
  const [tank] = tanksOf(DEMO.aircraft);
  if (!tank) throw new Error('the demo aircraft has a tank');
  return tank;
}

const content: Formula = {
  id: 'fuel-content',
  title: 'Mass and moment of the content of a tank',
  tex: ['m = V \\cdot \\rho', 'M = m \\cdot x'],
  symbols: [
    ['m', 'mass of the whole content', 'kg'],
    ['V', 'volume', 'l'],
    ['\\rho', 'density', 'kg/l'],
    ['M', 'moment', 'kg·mm'],
    ['x', 'arm at that volume, from the table of the tank where it has one', 'mm'],
  ],
  by: [fuelContent, fuelArmMm],
  holds: 'At the density of the record; it does not follow the temperature.',
  example() {
    const tank = demoTank();
    const { massKg, momentKgMm } = fuelContent(tank, 50);
    return {
      given: { V: [50, 'l'], '\\rho': [tank.densityKgPerL, 'kg/l'], x: [fuelArmMm(tank, 50), 'mm'] },
      steps: [sum('m = V \\cdot \\rho', massKg, 'kg'), sum('M = m \\cdot x', momentKgMm, 'kg·mm')],
    };
  },
};

const USABLE = 'm_u = (V - V_0) \\cdot \\rho';
const USABLE_MOMENT = 'M_u = V \\cdot \\rho \\cdot x - V_0 \\cdot \\rho \\cdot x_0';

const usable: Formula = {
  id: 'usable-fuel',
  title: 'Usable fuel',
  tex: [USABLE, USABLE_MOMENT],
  symbols: [
    ['m_u', 'mass of the usable fuel', 'kg'],
    ['M_u', 'its moment', 'kg·mm'],
    ['V', 'volume in the tank', 'l'],
    ['V_0', 'unusable volume, which belongs to the empty mass', 'l'],
    ['\\rho', 'density', 'kg/l'],
    ['x', 'arm at the volume in the tank', 'mm'],
    ['x_0', 'arm at the unusable volume', 'mm'],
  ],
  by: [usableFuel, usableFuelOf, fullFuelKg],
  holds: 'Negative where less than the unusable volume is in the tank. Of full tanks the masses add.',
  example() {
    const tank = demoTank();
    const { capacityL, unusableL, densityKgPerL } = tank;
    return {
      given: {
        V: [capacityL, 'l'],
        V_0: [unusableL, 'l'],
        '\\rho': [densityKgPerL, 'kg/l'],
        x: [fuelArmMm(tank, capacityL), 'mm'],
        x_0: [fuelArmMm(tank, unusableL), 'mm'],
      },
      steps: [
        sum(USABLE, fullFuelKg(DEMO.aircraft), 'kg'),
        sum(USABLE_MOMENT, usableFuelOf(tank, usableFuel(tank, capacityL).massKg).momentKgMm, 'kg·mm'),
      ],
    };
  },
};

const CHORDS = 'n = \\min(32, 144^{1/t})';
const STEP = 'V_j = V_0 + \\frac{j}{n} \\cdot (V_c - V_0)';

const chords: Formula = {
  id: 'steps-of-a-tank',
  title: 'Steps in which a tank with a table of arms is followed',
  tex: [CHORDS, STEP],
  symbols: [
    ['n', 'number of steps, rounded down to a whole number', ''],
    ['t', 'number of tanks that have a table', ''],
    ['V_j', 'volume after step j', 'l'],
    ['j', 'number of the step', ''],
    ['V_0', 'unusable volume', 'l'],
    ['V_c', 'capacity', 'l'],
  ],
  by: [fuelSteps],
  holds:
    'With a table the moment is a parabola between its lines and is followed by straight pieces. One such tank moves the centre of gravity by hundredths of a millimetre less or more than the parabola.',
  example() {
    const tank = demoTank();
    const steps = fuelSteps(tank, 1);
    return {
      given: { t: [1, ''], j: [8, ''], V_0: [tank.unusableL, 'l'], V_c: [tank.capacityL, 'l'] },
      steps: [sum(CHORDS, steps.length - 1), sum(STEP, steps[8] ?? Number.NaN, 'l')],
    };
  },
};

export const fuel: Topic = { id: 'fuel', title: 'Fuel', formulas: [content, usable, chords] };
