import { altitudeFactor, deratedA } from '../../worker/core/calc/electrical/ampacity.ts';
import { circuitResult } from '../../worker/core/calc/electrical/circuit.ts';
import { ohmPerM } from '../../worker/core/calc/electrical/wire-table.ts';
import { inputOf } from './case-of.ts';
import { demoCircuit, demoElectrical } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';
import { drops } from './voltage-drop.ts';
import { rated } from './wire-tables.ts';

const LONGEST = 'L = \\frac{U}{r \\cdot I \\cdot k}';

const longest: Formula = {
  id: 'longest-run',
  title: 'Longest run of a circuit',
  tex: [LONGEST],
  symbols: [
    ['L', 'longest run of the wire', 'm'],
    ['U', 'drop allowed: 0.5 V continuous and 1 V intermittent at 14 V, twice that at 28 V', 'V'],
    ['r', 'resistance of a metre at 20 °C', 'Ω/m'],
    ['I', 'current', 'A'],
    ['k', 'factor for the hot wire', ''],
  ],
  by: [circuitResult],
  holds:
    'Where a current flows. The wire is as hot as that current makes it; a wire whose capacity nobody knows is as hot as it may become. Of two limits, the shorter run counts.',
  example() {
    const electrical = demoElectrical();
    const circuit = demoCircuit('C-STROBE');
    const { continuousDrop, longestRunM } = circuitResult(circuit, electrical);
    const [ohm, { currentA = Number.NaN, dropV = Number.NaN, limitV = Number.NaN } = {}] = [
      ohmPerM(circuit) ?? Number.NaN,
      continuousDrop,
    ];
    return {
      given: {
        U: [limitV, 'V'],
        r: [ohm, 'Ω/m'],
        I: [currentA, 'A'],
        k: [dropV / (ohm * circuit.runM * currentA), ''],
      },
      steps: [sum(LONGEST, longestRunM ?? Number.NaN, 'm')],
    };
  },
};

const ALTITUDE = 'k_h = 1 - 0.09 \\cdot \\frac{h}{20000}';
const DERATED = 'I = I_0 \\cdot k_h \\cdot k_b';

const derated: Formula = {
  id: 'ampacity',
  title: 'Current that a wire can carry, from the charts',
  tex: [ALTITUDE, DERATED],
  symbols: [
    ['I', 'greatest continuous current', 'A'],
    ['I_0', 'current of the single wire in free air, off the chart', 'A'],
    ['k_h', 'factor of the altitude', ''],
    ['h', 'altitude, not below 0', 'ft'],
    ['k_b', 'factor of the bundle, off the chart', ''],
  ],
  by: [deratedA, altitudeFactor],
  holds:
    'Up to 20,000 ft, unless the record states a factor. Above, nobody has read the chart, and the wire does not pass.',
  example() {
    const { altitudeFt, ...rating } = inputOf<Parameters<typeof deratedA>[0] & { altitudeFt: number }>('EL-18');
    return {
      case: 'EL-18',
      given: { h: [altitudeFt, 'ft'], I_0: [rating.freeAirA, 'A'], k_b: [rating.bundleFactor, ''] },
      steps: [
        sum(ALTITUDE, altitudeFactor(altitudeFt) ?? Number.NaN),
        sum(DERATED, deratedA(rating, altitudeFt) ?? Number.NaN, 'A', 'bundledA'),
      ],
    };
  },
};

export const wires: Topic = {
  id: 'wires',
  title: 'Wires and their protection',
  formulas: [...drops, longest, derated, ...rated],
};
