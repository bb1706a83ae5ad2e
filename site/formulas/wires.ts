import { altitudeFactor, ampacityOf, deratedA } from '../../worker/calc/electrical/ampacity.ts';
import { circuitResult } from '../../worker/calc/electrical/circuit.ts';
import { greatestProtectionA } from '../../worker/calc/electrical/protection-table.ts';
import { copperGauge, LEAST_ALUMINIUM, ohmPerM, WIRE_TABLE } from '../../worker/calc/electrical/wire-table.ts';
import { gaugeNumber } from '../../worker/calc/wiring/wire-gauge.ts';
import type { Circuit } from '../../worker/visit/visit.ts';
import type { Gauge } from '../../worker/visit/wire-size.ts';
import { inputOf } from './case-of.ts';
import { demoElectrical } from './electrical-load.ts';
import type { Formula, Topic } from './formula.ts';
import { said, sum } from './steps.ts';
import { drops } from './voltage-drop.ts';

function demoCircuit(id: string): Circuit {
  const circuit = demoElectrical().circuits.find((each) => each.id === id);
  if (!circuit) throw new Error(`the demo visit has the circuit ${id}`);
  return circuit;
}

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
    'Where a current flows. The wire is as hot as the continuous current makes it; a wire whose capacity nobody knows is as hot as it may become.',
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

const OHM = 'r = \\frac{R}{304.8}';

const table: Formula = {
  id: 'wire-table',
  title: 'Current and resistance of a wire, from the table',
  tex: [OHM],
  symbols: [
    ['r', 'resistance of a metre at 20 °C', 'Ω/m'],
    ['R', 'resistance of 1000 ft at 20 °C, from the table', 'Ω'],
  ],
  by: [ampacityOf, ohmPerM],
  holds:
    'The current of the table holds up to 70 °C around the wire, 60,000 ft, a bundle used to 20 %, and 33 wires of sizes 24 to 10 or 9 wires of larger ones. Outside these the record must give figures off the charts.',
  example() {
    const { gauge, rating } = inputOf<{ gauge: Gauge; rating: '105' | '150' | '200' }>('EL-22');
    const circuit = { ...demoCircuit('C-RADIO'), gauge, temperatureRating: rating };
    const ampacityA = ampacityOf(circuit, 10_000)?.currentA ?? Number.NaN;
    const ohm = WIRE_TABLE[gauge]?.ohmPer1000Ft ?? Number.NaN;
    return {
      case: 'EL-22',
      given: { R: [ohm, 'Ω'] },
      steps: [
        said(`No. ${gauge} at ${rating} °C carries ${ampacityA} A; 1000 ft of it have ${ohm} Ω.`, { ampacityA, ohm }),
        sum(OHM, ohmPerM({ gauge }) ?? Number.NaN, 'Ω/m'),
      ],
    };
  },
};

const aluminium: Formula = {
  id: 'aluminium-wire',
  title: 'Aluminium wire',
  tex: ['n_c = n_a + 2'],
  symbols: [
    ['n_c', 'number of the copper wire that it is computed as', ''],
    ['n_a', 'number of the aluminium wire, 00 being −1', ''],
  ],
  by: [copperGauge, gaugeNumber],
  holds: 'From No. 8 on. No. 1 would match No. 3, which the table lacks, so it is not rated.',
  example() {
    const { gauge } = inputOf<{ gauge: Gauge }>('EL-29b');
    const copper = gaugeNumber(copperGauge({ gauge, material: 'aluminium' }) ?? gauge);
    return {
      case: 'EL-29b',
      given: { n_a: [gaugeNumber(gauge), ''] },
      steps: [
        sum('n_c = n_a + 2', copper, '', 'copper'),
        said(`The thinnest that the note allows is No. ${LEAST_ALUMINIUM}.`, { least: gaugeNumber(LEAST_ALUMINIUM) }),
      ],
    };
  },
};

const protection: Formula = {
  id: 'protection',
  title: 'Greatest protector of a wire',
  tex: ['P \\leq P_{\\max}(n)'],
  symbols: [
    ['P', 'rating of the breaker or fuse', 'A'],
    ['P_{\\max}(n)', 'greatest rating of the table for the number n of the wire', 'A'],
  ],
  by: [greatestProtectionA],
  holds:
    'Copper alone. A limit that the record states comes first. Of a size that the table lacks, what the wire can carry is the limit.',
  example() {
    const { gauge } = inputOf<{ gauge: Gauge }>('EL-01');
    const limitOf = (kind: 'breaker' | 'fuse'): number =>
      greatestProtectionA({ gauge }, { kind, ratingA: 0 })?.limitA ?? Number.NaN;
    const [breaker, fuse] = [limitOf('breaker'), limitOf('fuse')];
    return {
      case: 'EL-01',
      given: {},
      steps: [
        said(`No. ${gauge}: a breaker of at most ${breaker} A, or a fuse of at most ${fuse} A.`, { breaker, fuse }),
      ],
    };
  },
};

export const wires: Topic = {
  id: 'wires',
  title: 'Wires and their protection',
  formulas: [...drops, longest, derated, table, aluminium, protection],
};
