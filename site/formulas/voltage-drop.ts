import { REGULATED_V } from '../../worker/core/calc/electrical/load.ts';
import {
  conductorTemperatureC,
  dropV,
  feederLimitV,
  GROUND_RETURN_LIMIT_MILLIOHM,
  longestRunAtTemperature,
  resistanceRatio,
} from '../../worker/core/calc/electrical/voltage-drop.ts';
import { ohmPerM } from '../../worker/core/calc/electrical/wire-table.ts';
import type { Electrical } from '../../worker/core/record/visit.ts';
import type { Gauge } from '../../worker/core/record/wire-size.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const HEAT = 'k = \\frac{Z + T}{Z + 20}';
const DROP = 'U = r \\cdot L \\cdot I \\cdot k';

const drop: Formula = {
  id: 'voltage-drop',
  title: 'Voltage drop in a wire',
  tex: [HEAT, DROP],
  symbols: [
    ['U', 'drop', 'V'],
    ['r', 'resistance of a metre at 20 °C', 'Ω/m'],
    ['L', 'run of the wire', 'm'],
    ['I', 'current', 'A'],
    ['k', 'factor for the hot wire', ''],
    ['T', 'temperature of the conductor, not below 20 °C', '°C'],
    ['Z', '234.5 for copper, 238.1 for aluminium', '°C'],
  ],
  by: [dropV, resistanceRatio, ohmPerM],
  holds: 'For the wire alone, without the ground return. A colder wire is given no credit.',
  example() {
    const { gauge, runFt, currentA } = inputOf<{ gauge: Gauge; runFt: number; currentA: number }>('EL-08');
    const ohm = ohmPerM({ gauge }) ?? Number.NaN;
    return {
      case: 'EL-08',
      given: {
        Z: [234.5, '°C'],
        T: [20, '°C'],
        r: [ohm, 'Ω/m'],
        L: [runFt * 0.3048, 'm'],
        I: [currentA, 'A'],
      },
      steps: [
        sum(HEAT, resistanceRatio(20)),
        sum(DROP, dropV({ ohmPerM: ohm, runM: runFt * 0.3048, currentA }), 'V', 'dropV'),
      ],
    };
  },
};

type Heated = Parameters<typeof conductorTemperatureC>[0] & { coldRunFt: number };

const TEMPERATURE = 'T_2 = T_1 + (T_R - T_1) \\cdot \\sqrt{\\frac{I}{I_{\\max}}}';
const HOT_RUN = 'L_2 = \\frac{254.5 \\cdot L_1}{234.5 + T_2}';

const hot: Formula = {
  id: 'hot-wire',
  title: 'Temperature of a loaded wire, and its run',
  tex: [TEMPERATURE, HOT_RUN],
  symbols: [
    ['T_2', 'temperature of the conductor', '°C'],
    ['T_1', 'temperature around it', '°C'],
    ['T_R', 'temperature that the wire is rated for', '°C'],
    ['I', 'current', 'A'],
    ['I_{\\max}', 'current that it can carry', 'A'],
    ['L_2', 'longest run of the hot wire', ''],
    ['L_1', 'longest run at 20 °C', ''],
  ],
  by: [conductorTemperatureC, longestRunAtTemperature],
  holds: 'Of aluminium with 258.1 and 238.1 instead. Runs in any one unit.',
  example() {
    const { coldRunFt, ...at } = inputOf<Heated>('EL-19');
    const conductorC = conductorTemperatureC(at);
    return {
      case: 'EL-19',
      given: {
        T_1: [at.ambientC, '°C'],
        T_R: [at.ratedC, '°C'],
        I: [at.currentA, 'A'],
        'I_{\\max}': [at.ampacityA, 'A'],
        L_1: [coldRunFt, 'ft'],
      },
      steps: [
        sum(TEMPERATURE, conductorC, '°C', 'conductorC'),
        sum(HOT_RUN, longestRunAtTemperature(coldRunFt, conductorC), 'ft', 'runFt'),
      ],
    };
  },
};

const FEEDER = 'U_f = 0.02 \\cdot U_r';

const feeder: Formula = {
  id: 'main-feeder',
  title: 'Drop allowed in a main power wire',
  tex: [FEEDER],
  symbols: [
    ['U_f', 'drop allowed from the source or the battery to the bus', 'V'],
    ['U_r', 'regulated voltage', 'V'],
  ],
  by: [feederLimitV],
  holds: 'At the rated current of the source, or the five-minute rate of the battery.',
  example() {
    const { system } = inputOf<Pick<Electrical, 'system'>>('EL-30a');
    const groundReturnOhm = GROUND_RETURN_LIMIT_MILLIOHM / 1000;
    return {
      case: 'EL-30a',
      given: { U_r: [REGULATED_V[system], 'V'] },
      steps: [
        sum(FEEDER, feederLimitV(system), 'V', 'limitV'),
        said(`A ground return may have ${groundReturnOhm} Ω.`, { groundReturnOhm }),
      ],
    };
  },
};

export const drops: readonly Formula[] = [drop, hot, feeder];
