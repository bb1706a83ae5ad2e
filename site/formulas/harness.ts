import { gramPerM, harnessMass, INSULATION_SHARE, SCREEN_SHARE } from '../../worker/core/calc/wiring/harness-mass.ts';
import {
  areaMm2,
  circularMils,
  diameterMm,
  gaugeNumber,
  solidOhmPer1000Ft,
} from '../../worker/core/calc/wiring/wire-gauge.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, sum } from './steps.ts';

const DIAMETER = 'd = 0.127 \\cdot 92^{(36 - n)/39}';
const INCHES = 'd_i = \\frac{d}{25.4}';
const MILS = 'A_m = \\left( \\frac{d}{0.0254} \\right)^2';
const AREA = 'A = \\frac{\\pi}{4} \\cdot d^2';
const OHM = 'R = \\frac{304.8}{58 \\cdot A}';

const gauge: Formula = {
  id: 'wire-gauge',
  title: 'Wire gauge',
  tex: [DIAMETER, INCHES, MILS, AREA, OHM],
  symbols: [
    ['d', 'diameter of the solid conductor', 'mm'],
    ['n', 'number of the gauge; 0 for 0, −1 for 00, −3 for 0000', ''],
    ['d_i', 'diameter in inches', 'in'],
    ['A_m', 'area in circular mils', ''],
    ['A', 'area', 'mm²'],
    ['R', 'resistance of 1000 ft of solid copper at 20 °C', 'Ω'],
  ],
  by: [gaugeNumber, diameterMm, areaMm2, circularMils, solidOhmPer1000Ft],
  holds: 'Solid conductors. Stranded aircraft wire has the resistance of its own table.',
  example() {
    const { gauge: n } = inputOf<{ gauge: number }>('AW-11');
    return {
      case: 'AW-11',
      given: { n: [gaugeNumber(`${n}` as '22'), ''] },
      steps: [
        sum(DIAMETER, diameterMm(n), 'mm'),
        sum(INCHES, diameterMm(n) / 25.4, 'in', 'diameterIn'),
        sum(MILS, circularMils(n), '', 'circularMils'),
        sum(AREA, areaMm2(n), 'mm²'),
        sum(OHM, solidOhmPer1000Ft(n), 'Ω', 'ohm'),
      ],
    };
  },
};

const GRAMS = 'g = A \\cdot (\\rho + (s_i + s_s) \\cdot 8.96)';

const wireMass: Formula = {
  id: 'mass-of-a-wire',
  title: 'Mass of a metre of wire, estimated',
  tex: [GRAMS],
  symbols: [
    ['g', 'mass of a metre', 'g/m'],
    ['A', 'area of the conductor', 'mm²'],
    ['\\rho', 'density of the metal: copper 8.96, aluminium 2.7', 'g/cm³'],
    ['s_i', 'allowance for the insulation', ''],
    ['s_s', 'allowance for the screen, 0 without one', ''],
  ],
  by: [gramPerM, areaMm2],
  holds: 'Where the record gives no mass of the wire. Weighing the harness is better.',
  example: () => ({
    given: { A: [areaMm2(22), 'mm²'], '\\rho': [8.96, 'g/cm³'], s_i: [INSULATION_SHARE, ''], s_s: [SCREEN_SHARE, ''] },
    steps: [sum(GRAMS, gramPerM({ gauge: '22' }, true), 'g/m')],
  }),
};

const MASS = 'm = \\frac{\\sum_i L_i \\cdot g_i}{1000}';
const ARM = 'x = \\frac{\\sum_i L_i \\cdot g_i \\cdot x_i}{\\sum_i L_i \\cdot g_i}';

const harness: Formula = {
  id: 'mass-of-a-harness',
  title: 'Mass and arm of a harness',
  tex: [MASS, ARM],
  symbols: [
    ['m', 'mass of the wires added, or of those taken out', 'kg'],
    ['L_i', 'length of each wire', 'm'],
    ['g_i', 'mass of a metre of it', 'g/m'],
    ['x', 'arm of the harness', 'mm'],
    ['x_i', 'arm of each wire', 'mm'],
  ],
  by: [harnessMass],
  holds:
    'The arm is that of the wires whose arm is stated. The result is held against the lines of the equipment change; it is not put in by itself.',
  example() {
    const { wiring } = DEMO;
    const [first, second] = wiring?.wires ?? [];
    if (!wiring || !first || !second) throw new Error('the demo visit has wires');
    const wires = [
      { ...first, change: 'added' as const, lengthM: 2.4, gramPerM: 5.2, armMm: 1290 },
      { ...second, change: 'added' as const, lengthM: 3.1, gramPerM: 9.5, armMm: 2100 },
    ];
    const { added } = harnessMass({ ...wiring, wires, found: [] });
    return {
      given: {
        ...numbered('L', [2.4, 3.1], 'm'),
        ...numbered('g', [5.2, 9.5], 'g/m'),
        ...numbered('x', [1290, 2100], 'mm'),
      },
      steps: [
        sum('m = \\frac{L_1 \\cdot g_1 + L_2 \\cdot g_2}{1000}', added.massKg, 'kg'),
        sum(
          'x = \\frac{L_1 \\cdot g_1 \\cdot x_1 + L_2 \\cdot g_2 \\cdot x_2}{L_1 \\cdot g_1 + L_2 \\cdot g_2}',
          added.armMm ?? Number.NaN,
          'mm',
        ),
      ],
    };
  },
};

export const harnessTopic: Topic = { id: 'harness', title: 'Gauge and harness', formulas: [gauge, wireMass, harness] };
