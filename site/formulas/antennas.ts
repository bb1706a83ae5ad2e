import { dragLb, dragN } from '../../worker/core/calc/antennas/drag.ts';
import { antennaResults, cableLossDb } from '../../worker/core/calc/antennas/results.ts';
import { quarterWaveMm, wavelengthMm } from '../../worker/core/calc/antennas/wavelength.ts';
import type { Antenna } from '../../worker/core/record/visit.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

const { antennas: record } = DEMO;

function demoAntennas(): { one: Antenna; other: Antenna } {
  const [one, other] = record?.items ?? [];
  if (!one || !other) throw new Error('the demo visit has antennas');
  return { one, other };
}

const WAVE = '\\lambda = \\frac{299792.458}{f}';
const QUARTER = 'q = \\frac{\\lambda}{4}';

const wavelength: Formula = {
  id: 'wavelength',
  title: 'Wavelength and quarter wave',
  tex: [WAVE, QUARTER],
  symbols: [
    ['\\lambda', 'wavelength', 'mm'],
    ['f', 'frequency', 'MHz'],
    ['q', 'quarter of the wavelength: least radius of a ground plane', 'mm'],
  ],
  by: [wavelengthMm, quarterWaveMm],
  holds:
    'In air as in vacuum. A rod is a few per cent shorter than its quarter wave; that is the manufacturer’s matter.',
  example() {
    const { frequencyMhz } = inputOf<{ frequencyMhz: number }>('AN-06a');
    return {
      case: 'AN-06a',
      given: { f: [frequencyMhz, 'MHz'] },
      steps: [
        sum(WAVE, wavelengthMm(frequencyMhz), 'mm'),
        sum(QUARTER, quarterWaveMm(frequencyMhz), 'mm', 'quarterMm'),
      ],
    };
  },
};

const DISTANCE = 'd = \\sqrt{(x_1 - x_2)^2 + (y_1 - y_2)^2 + (z_1 - z_2)^2}';

const spacing: Formula = {
  id: 'antenna-spacing',
  title: 'Distance of two antennas',
  tex: [DISTANCE],
  symbols: [
    ['d', 'distance', 'mm'],
    ['x_1', 'arm of the first antenna', 'mm'],
    ['y_1', 'its place to the right of the centreline', 'mm'],
    ['z_1', 'its place above the reference line', 'mm'],
    ['x_2', 'arm of the second antenna', 'mm'],
    ['y_2', 'its place to the right', 'mm'],
    ['z_2', 'its place above', 'mm'],
  ],
  by: [antennaResults],
  holds:
    'Straight through the structure. Compared with the greater of the distances that the two manufacturers require.',
  example() {
    const { one, other } = demoAntennas();
    const found = record && antennaResults(record).spacings[0];
    return {
      given: {
        x_1: [one.position.armMm, 'mm'],
        x_2: [other.position.armMm, 'mm'],
        y_1: [one.position.rightMm, 'mm'],
        y_2: [other.position.rightMm, 'mm'],
        z_1: [one.position.upMm, 'mm'],
        z_2: [other.position.upMm, 'mm'],
      },
      steps: [sum(DISTANCE, found?.distanceMm ?? Number.NaN, 'mm')],
    };
  },
};

const LOSS = 'a = L \\cdot a_L + n \\cdot a_n';

const loss: Formula = {
  id: 'cable-loss',
  title: 'Loss of an antenna cable',
  tex: [LOSS],
  symbols: [
    ['a', 'loss of the feed', 'dB'],
    ['L', 'length of the cable', 'm'],
    ['a_L', 'loss of a metre at the frequency', 'dB/m'],
    ['n', 'number of connectors', ''],
    ['a_n', 'loss of each', 'dB'],
  ],
  by: [cableLossDb],
  holds: 'For a matched antenna; a standing wave adds to it.',
  example() {
    const { cable } = demoAntennas().one;
    if (!cable) throw new Error('the first antenna of the demo visit has a cable');
    return {
      given: {
        L: [cable.lengthM, 'm'],
        a_L: [cable.lossDbPerM, 'dB/m'],
        n: [cable.connectors, ''],
        a_n: [cable.lossDbPerConnector, 'dB'],
      },
      steps: [sum(LOSS, cableLossDb(cable), 'dB')],
    };
  },
};

const DRAG = 'D = 0.000327 \\cdot A \\cdot V^2';
const NEWTONS = 'D_N = 4.44822 \\cdot D';

const drag: Formula = {
  id: 'antenna-drag',
  title: 'Load of the wind on an antenna',
  tex: [DRAG, NEWTONS],
  symbols: [
    ['D', 'load', 'lbf'],
    ['A', 'frontal area', 'ft²'],
    ['V', 'speed', 'mph'],
    ['D_N', 'load in newtons', 'N'],
  ],
  by: [dragLb, dragN],
  holds:
    'The factor holds the reduction by 90 % for a streamlined shape; a flat plate has ten times the load. Records give cm² and km/h.',
  example() {
    const { areaFt2, speedMph } = inputOf<{ areaFt2: number; speedMph: number }>('AN-07');
    return {
      case: 'AN-07',
      given: { A: [areaFt2, 'ft²'], V: [speedMph, 'mph'] },
      steps: [
        sum(DRAG, dragLb(areaFt2, speedMph), 'lbf', 'dragLb'),
        sum(NEWTONS, dragN(areaFt2 * 929.0304, speedMph * 1.609344), 'N'),
      ],
    };
  },
};

export const antennas: Topic = { id: 'antennas', title: 'Antennas', formulas: [wavelength, spacing, loss, drag] };
