import { readVisit } from '../../tests/calc/read-visit.ts';
import { COMPASS_TOPICS } from '../../tests/published/compass-cases.ts';
import { correctionOf, deviationAt } from '../../worker/calc/compass/coefficients.ts';
import { reduceSwing } from '../../worker/calc/compass/swing.ts';
import { variationAt } from '../../worker/calc/compass/variation.ts';
import { inputOf } from './case-of.ts';
import { coefficients } from './compass-coefficients.ts';
import type { Formula, Topic } from './formula.ts';
import { said, sum } from './steps.ts';

const { compass: swung } = readVisit('nose-wheel-full');

function demoSwing() {
  const result = swung && reduceSwing(swung).swings[1];
  if (!result?.coefficients) throw new Error('the demo visit swings a compass');
  return { ...result, coefficients: result.coefficients };
}

type Readings = Record<'N' | 'E' | 'S' | 'W', [headingDeg: number, compassDeg: number]>;

const deviation: Formula = {
  id: 'deviation',
  title: 'Deviation',
  tex: ['d = h - c'],
  symbols: [
    ['d', 'deviation, east positive', '°'],
    ['h', 'magnetic heading', '°'],
    ['c', 'reading of the compass', '°'],
  ],
  by: [reduceSwing],
  holds:
    'By the shorter turn: a heading of 359° and a reading of 3° give −4°, not 356°. What a load moves the compass is found in the same way, on less off.',
  example() {
    const { readings } = inputOf<{ readings: Readings }>('CD-01');
    const { deviationE = Number.NaN } = COMPASS_TOPICS['correction-swing']({ readings });
    const [h, c] = readings.E;
    return {
      case: 'CD-01',
      given: { h: [h, '°'], c: [c, '°'] },
      steps: [sum('d = h - c', deviationE, '°', 'deviationE')],
    };
  },
};

const B = 'B = \\frac{d_E - d_W}{2}';
const C = 'C = \\frac{d_N - d_S}{2}';
const SOUTH = 'k_S = c_S - C';
const WEST = 'k_W = c_W - B';

const correction: Formula = {
  id: 'correction-swing',
  title: 'Correction swing',
  tex: [B, C, SOUTH, WEST],
  symbols: [
    ['B', 'coefficient B from the cardinal headings', '°'],
    ['C', 'coefficient C from them', '°'],
    ['d_N', 'deviation on north', '°'],
    ['d_E', 'deviation on east', '°'],
    ['d_S', 'deviation on south', '°'],
    ['d_W', 'deviation on west', '°'],
    ['c_S', 'reading of the compass on south', '°'],
    ['c_W', 'reading of the compass on west', '°'],
    ['k_S', 'what the compass is set to on south', '°'],
    ['k_W', 'what the compass is set to on west', '°'],
  ],
  by: [correctionOf],
  holds: 'Where all four cardinal headings were read within 5°.',
  example() {
    const { readings } = inputOf<{ readings: Readings }>('CD-01');
    const found = COMPASS_TOPICS['correction-swing']({ readings });
    const of = (name: string): number => (found as Record<string, number>)[name] ?? Number.NaN;
    return {
      case: 'CD-01',
      given: {
        d_N: [of('deviationN'), '°'],
        d_E: [of('deviationE'), '°'],
        d_S: [of('deviationS'), '°'],
        d_W: [of('deviationW'), '°'],
        c_S: [readings.S[1], '°'],
        c_W: [readings.W[1], '°'],
      },
      steps: [
        sum(B, of('B'), '°', 'B'),
        sum(C, of('C'), '°', 'C'),
        sum(SOUTH, of('setSouth'), '°', 'setSouth'),
        sum(WEST, of('setWest'), '°', 'setWest'),
      ],
    };
  },
};

const card: Formula = {
  id: 'steering-card',
  title: 'Steering card',
  tex: ['s = h - d'],
  symbols: [
    ['s', 'compass heading to steer', '°'],
    ['h', 'magnetic heading to fly, every 30°', '°'],
    ['d', 'deviation that the coefficients give on it', '°'],
  ],
  by: [reduceSwing, deviationAt],
  holds: 'Brought to 0 up to 360°.',
  example() {
    const swing = demoSwing();
    const line = swing.card.find(({ forDeg }) => forDeg === 120);
    return {
      given: { h: [120, '°'], d: [deviationAt(swing.coefficients, 120), '°'] },
      steps: [sum('s = h - d', line?.steerDeg ?? Number.NaN, '°')],
    };
  },
};

const variation: Formula = {
  id: 'variation',
  title: 'Magnetic heading from a true one',
  tex: ['h = h_t - v'],
  symbols: [
    ['h', 'magnetic heading', '°'],
    ['h_t', 'true heading', '°'],
    ['v', 'variation at the place and time by the World Magnetic Model, east positive', '°'],
  ],
  by: [variationAt, reduceSwing],
  holds:
    'Where a swing was read against true headings. Outside the years of the model the nearest edition answers for its first or last day, and the pack says so.',
  example() {
    const place = inputOf<Parameters<(typeof COMPASS_TOPICS)['variation']>[0]>('WM-08');
    const v = COMPASS_TOPICS.variation(place).variation;
    const readings = [{ headingDeg: 90, compassDeg: 80 }];
    const record = swung && {
      ...swung,
      reference: 'true' as const,
      swungAt: `${place.year}-01-01T00:00:00Z`,
      position: { latitudeDeg: place.latitude, longitudeDeg: place.longitude, elevationM: place.heightKm * 1000 },
      swings: [{ state: 'equipment-on' as const, readings }],
    };
    const heading = record && reduceSwing(record).swings[0]?.readings[0]?.headingDeg;
    return {
      case: 'WM-08',
      given: { h_t: [90, '°'], v: [v, '°'] },
      steps: [
        said(
          `Model of ${place.year}, latitude ${place.latitude}°, longitude ${place.longitude}°, ${place.heightKm} km up: ${v.toFixed(2)}°.`.replaceAll(
            '-',
            '−',
          ),
          { variation: v },
        ),
        sum('h = h_t - v', heading ?? Number.NaN, '°'),
      ],
    };
  },
};

export const compass: Topic = {
  id: 'compass',
  title: 'Compass',
  formulas: [deviation, correction, ...coefficients, card, variation],
};
