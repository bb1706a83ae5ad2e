import { usableFuelOf } from '../../worker/core/calc/loading/burn-path.ts';
import {
  chordOf,
  fuelArmMm,
  fuelErrorArmMm,
  fullFuelKg,
  tankContent,
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
  by: [tankContent, fuelArmMm],
  holds: 'At the density of the record; it does not follow the temperature.',
  example() {
    const tank = demoTank();
    const { massKg, momentKgMm } = tankContent(tank, 50);
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

const CHORD = 'E = \\frac{\\rho \\cdot |b| \\cdot (V_2 - V_1)^2}{4}';
const SHARE = 'e = \\frac{E}{m}';

const SLOPE = 'x_e = x_1 + \\frac{x_2 - x_1}{V_2 - V_1} \\cdot (2 \\cdot V - V_1)';

const slope: Formula = {
  id: 'arm-of-a-little-more-fuel',
  title: 'Arm at which a little more fuel acts',
  tex: [SLOPE],
  symbols: [
    ['x_e', 'slope of the moment of the content, by which an error of a stated content counts', 'mm'],
    ['x_1', 'arm at the line of the table below', 'mm'],
    ['x_2', 'arm at the line of the table above', 'mm'],
    ['V_1', 'volume at the line below', 'l'],
    ['V_2', 'volume at the line above', 'l'],
    ['V', 'volume in the tank', 'l'],
  ],
  by: [fuelErrorArmMm],
  holds: 'Between two lines of a table of arms. A tank with one arm has that arm.',
  example() {
    const [first, second] = STEEP;
    const atL = 20;
    return {
      given: {
        x_1: [first?.armMm ?? 0, 'mm'],
        x_2: [second?.armMm ?? 0, 'mm'],
        V_1: [first?.volumeL ?? 0, 'l'],
        V_2: [second?.volumeL ?? 0, 'l'],
        V: [atL, 'l'],
      },
      steps: [sum(SLOPE, fuelErrorArmMm({ ...demoTank(), armByVolume: STEEP }, atL), 'mm')],
    };
  },
};

/** A table on which the arm moves by 2.5 mm for each litre. */
const STEEP = [
  { volumeL: 0, armMm: 1700 },
  { volumeL: 80, armMm: 1900 },
];

const chords: Formula = {
  id: 'chord-of-a-tank',
  title: 'Straight lines that follow a tank with a table of arms',
  tex: [CHORD, SHARE],
  symbols: [
    ['E', 'distance of its moment from a straight line between two volumes', 'kg·mm'],
    ['\\rho', 'density', 'kg/l'],
    ['b', 'change of the arm with the volume', 'mm/l'],
    ['V_1', 'lower volume', 'l'],
    ['V_2', 'higher volume', 'l'],
    ['m', 'mass of the aircraft', 'kg'],
    ['e', 'error of the centre of gravity', 'mm'],
  ],
  by: [chordOf],
  holds:
    'Between two lines of the table, where its moment is a parabola. Contents are halved until no loading can be worse than the worst one found by more than 0.02 mm.',
  example() {
    const { fromL, toL, belowKgMm } = chordOf({ ...demoTank(), armByVolume: STEEP }, 40, 80);
    return {
      given: {
        '\\rho': [demoTank().densityKgPerL, 'kg/l'],
        b: [2.5, 'mm/l'],
        V_1: [fromL, 'l'],
        V_2: [toL, 'l'],
        m: [300, 'kg'],
      },
      steps: [sum(CHORD, belowKgMm, 'kg·mm'), sum(SHARE, belowKgMm / 300, 'mm')],
    };
  },
};

export const fuel: Topic = { id: 'fuel', title: 'Fuel', formulas: [content, usable, slope, chords] };
