import { sunsetFor } from '../../worker/core/calc/clock/daylight.ts';
import { compareRuns } from '../../worker/core/calc/engine/engine-runs.ts';
import { printTimestamp } from '../../worker/core/text/dates.ts';
import { CLOCK_TOPICS } from '../published/clock-cases.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const sunset: Formula = {
  id: 'sunset',
  title: 'Sunset',
  tex: ['h(t) + r + R = 0'],
  symbols: [
    ['h(t)', 'height of the centre of the sun above the horizon at the moment looked for', '°'],
    ['r', 'apparent radius of the sun, about a quarter of a degree', '°'],
    ['R', 'refraction at the horizon, 34/60 at sea level and less in thinner air', '°'],
  ],
  by: [sunsetFor],
  holds:
    'The upper limb at a level horizon; mountains and the height of the eye are left out. Where the sun neither rises nor sets within a day there is none.',
  example() {
    const input = inputOf<Parameters<(typeof CLOCK_TOPICS)['sunset']>[0]>('SU-01');
    const { minutes } = CLOCK_TOPICS.sunset(input);
    const found = sunsetFor({ latitudeDeg: input.latitude, longitudeDeg: input.longitude }, input.from);
    const place = `latitude ${input.latitude}°, longitude ${input.longitude}°`.replaceAll('-', '−');
    return {
      case: 'SU-01',
      given: {},
      steps: [
        said(
          `At ${place}, after ${printTimestamp(input.from)}: ${printTimestamp(found?.at ?? '')}, ${Math.round(minutes)} minutes later.`,
          { minutes },
        ),
      ],
    };
  },
};

const engine: Formula = {
  id: 'engine-runs',
  title: 'Engine before and after the work',
  tex: ['c = a - b', '|c| > \\max(s_b, s_a)'],
  symbols: [
    ['c', 'change of an instrument', ''],
    ['b', 'reading of the last run before the work', ''],
    ['a', 'reading of the last run after it', ''],
    ['s_b', 'step of the display before', ''],
    ['s_a', 'step of the display after', ''],
  ],
  by: [compareRuns],
  holds: 'Counts as changed when it is more than a step. Temperature and pressure of the day are not taken out.',
  example() {
    const [speed] = compareRuns(DEMO.engineRuns ?? []);
    return {
      given: {
        a: [speed?.after ?? Number.NaN, '1/min'],
        b: [speed?.before ?? Number.NaN, '1/min'],
        s_b: [10, '1/min'],
        s_a: [10, '1/min'],
      },
      steps: [
        sum('c = a - b', speed?.change ?? Number.NaN, '1/min'),
        said(speed?.isChanged ? 'More than a step: changed.' : 'Not more than a step: as it was.'),
      ],
    };
  },
};

export const outside: readonly Formula[] = [sunset, engine];
