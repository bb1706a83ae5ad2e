import { ampacityOf, hotAmpacityA } from '../../worker/core/calc/electrical/ampacity.ts';
import { greatestProtectionA } from '../../worker/core/calc/electrical/protection-table.ts';
import { copperGauge, MIN_ALUMINIUM, ohmPerM, WIRE_TABLE } from '../../worker/core/calc/electrical/wire-table.ts';
import { gaugeNumber } from '../../worker/core/calc/wiring/wire-gauge.ts';
import type { Gauge } from '../../worker/core/record/wire-size.ts';
import { inputOf } from './case-of.ts';
import { demoCircuit } from './demo.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

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
    'The current of the table is valid up to 60,000 ft, for a bundle used to 20 %, and 33 wires of sizes 24 to 10 or 9 wires of larger ones. Outside these the record must give figures off the charts. Above 70 °C around the wire see the next formula.',
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

const HOT = 'I = I_{70} \\cdot \\sqrt{\\frac{T_R - T}{T_R - 70}}';

const hot: Formula = {
  id: 'wire-in-heat',
  title: 'Current of a wire in surroundings above 70 °C',
  tex: [HOT],
  symbols: [
    ['I', 'continuous current', 'A'],
    ['I_{70}', 'current of the table, for 70 °C around the wire', 'A'],
    ['T_R', 'temperature that the wire is made for', '°C'],
    ['T', 'temperature around the wire', '°C'],
  ],
  by: [hotAmpacityA],
  holds:
    'Up to the temperature that the wire is made for. Never more than the columns of the table give for that rise of temperature.',
  example() {
    const [row, ambientC] = [WIRE_TABLE['8'], 115];
    if (!row) throw new Error('the table has No. 8');
    return {
      given: { 'I_{70}': [row.ampacityA['150'], 'A'], T_R: [150, '°C'], T: [ambientC, '°C'] },
      steps: [sum(HOT, hotAmpacityA(row, '150', ambientC), 'A')],
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
        said(`The thinnest that the note allows is No. ${MIN_ALUMINIUM}.`, { least: gaugeNumber(MIN_ALUMINIUM) }),
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

export const rated: readonly Formula[] = [table, hot, aluminium, protection];
