import { deviationAt } from '../../worker/core/calc/compass/coefficients.ts';
import { reduceSwing } from '../../worker/core/calc/compass/swing.ts';
import { variationAt } from '../../worker/core/calc/compass/variation.ts';
import { COMPASS_TOPICS } from '../published/compass-cases.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const { compass: swung } = DEMO;

function demoSwing() {
  const result = swung && reduceSwing(swung).swings[1];
  if (!result?.coefficients) throw new Error('the demo visit swings a compass');
  return { ...result, coefficients: result.coefficients };
}

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

export const headings: readonly Formula[] = [card, variation];
