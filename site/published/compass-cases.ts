import { coefficientsOf, correctionOf, deviationAt } from '../../worker/core/calc/compass/coefficients.ts';
import { type CompassRecord, reduceSwing, type SwingResult } from '../../worker/core/calc/compass/swing.ts';
import { variationAt } from '../../worker/core/calc/compass/variation.ts';
import { compute } from '../../worker/core/calc/results.ts';
import { passGate } from '../../worker/core/gate/gate.ts';
import { wrap360 } from '../../worker/core/units/angle.ts';
import { readVisit, SETTINGS } from './read-visit.ts';

const POINTS = { N: 0, NE: 45, E: 90, SE: 135, S: 180, SW: 225, W: 270, NW: 315 } as const;
type Point = keyof typeof POINTS;

/** Magnetic heading and compass reading near a point of the compass. */
type Readings = Partial<Record<Point, [headingDeg: number, compassDeg: number]>>;

function swung(readings: { headingDeg: number; compassDeg: number }[]): SwingResult {
  const { compass } = readVisit('nose-wheel-full');
  if (!compass) throw new Error('the full visit has a compass swing');
  const record: CompassRecord = { ...compass, swings: [{ state: 'equipment-on', readings }] };
  const [result] = reduceSwing(record).swings;
  if (!result) throw new Error('one swing gives one result');
  return result;
}

const listed = (readings: Readings): { point: Point; headingDeg: number; compassDeg: number }[] =>
  Object.entries(readings).map(([point, [headingDeg, compassDeg]]) => ({
    point: point as Point,
    headingDeg,
    compassDeg,
  }));

function coefficients(result: SwingResult): NonNullable<SwingResult['coefficients']> {
  if (!result.coefficients) throw new Error('the case determines its coefficients');
  return result.coefficients;
}

const observed = (deviations: Record<string, number>): { headingDeg: number; compassDeg: number }[] =>
  Object.entries(deviations).map(([point, deviation]) => {
    const headingDeg = POINTS[point as Point];
    return { headingDeg, compassDeg: wrap360(headingDeg - deviation) };
  });

export const COMPASS_TOPICS = {
  /** Deviations on the cardinal headings, and what the compass is set to with the correctors. */
  'correction-swing': ({ readings }: { readings: Readings }) => {
    const entries = listed(readings);
    const result = swung(entries);
    const deviationOf = (heading: number): number | undefined =>
      result.readings.find(({ headingDeg }) => headingDeg === wrap360(heading))?.deviationDeg;
    const deviations = entries.map(({ point, headingDeg }) => [
      `deviation${point}`,
      deviationOf(headingDeg) ?? Number.NaN,
    ]);
    const { B, C, setSouthDeg, setWestDeg } = result.correction ?? {};
    return {
      ...Object.fromEntries(deviations),
      B: B ?? Number.NaN,
      C: C ?? Number.NaN,
      setSouth: setSouthDeg ?? Number.NaN,
      setWest: setWestDeg ?? Number.NaN,
    };
  },

  /** Deviations all round, coefficient A, and what to steer once the compass has been turned by A. */
  'check-swing': ({ readings }: { readings: Readings }) => {
    const entries = listed(readings);
    const result = swung(entries);
    const found = coefficients(result);
    const rows = entries.flatMap(({ point, headingDeg }) => {
      const deviation = result.readings.find((reading) => reading.headingDeg === wrap360(headingDeg))?.deviationDeg;
      const left = deviationAt(found, POINTS[point]) - found.A;
      return [
        [`deviation${point}`, deviation ?? Number.NaN],
        [`residual${point}`, (deviation ?? Number.NaN) - found.A],
        [`steer${point}`, wrap360(POINTS[point] - left)],
      ];
    });
    return { A: found.A, ...Object.fromEntries(rows) };
  },

  /** A, D and E by least squares; B and C from the cardinal headings alone. */
  'swing-analysis': ({ deviations }: { deviations: Record<string, number> }) => {
    const result = swung(observed(deviations));
    const { A, D, E } = coefficients(result);
    return { A, D, E, B: result.correction?.B ?? Number.NaN, C: result.correction?.C ?? Number.NaN };
  },

  /** All five by least squares, and the residuals as fit less observed. */
  'swing-fit': ({ deviations }: { deviations: Record<string, number> }) => {
    const result = swung(observed(deviations));
    const residuals = Object.keys(deviations).map((point) => {
      const reading = result.readings.find(({ headingDeg }) => headingDeg === POINTS[point as Point]);
      return [`residual${point}`, -(reading?.residualDeg ?? Number.NaN)];
    });
    return { ...coefficients(result), ...Object.fromEntries(residuals), greatest: result.greatestResidualDeg };
  },

  /** Errors as indicated less actual, the opposite of a deviation: corrections and index. */
  'swing-errors': ({ errors }: { errors: Record<string, number> }) => {
    const deviations = Object.entries(errors).map(([point, error]) => {
      const headingDeg = POINTS[point as Point];
      return { headingDeg, compassDeg: headingDeg + error, deviationDeg: -error };
    });
    const correction = correctionOf(deviations);
    return {
      northSouth: -(correction?.C ?? Number.NaN),
      eastWest: -(correction?.B ?? Number.NaN),
      index: -(coefficientsOf(deviations)?.A ?? Number.NaN),
    };
  },

  /** Whether the gate lets a deviation on north pass: 1 for yes, 0 for no. */
  'deviation-limit': ({ deviation }: { deviation: number }) => {
    const visit = readVisit('nose-wheel-full');
    const readings = [{ headingDeg: 0, compassDeg: wrap360(-deviation) }];
    if (!visit.compass) throw new Error('the full visit has a compass swing');
    const compass: CompassRecord = { ...visit.compass, swings: [{ state: 'equipment-on', readings }] };
    const changed = { ...visit, compass };
    const { findings } = passGate(changed, compute(changed, SETTINGS), { at: SETTINGS.at, facts: {} });
    return { isAllowed: findings.some(({ code }) => code === 'DEVIATION_OVER_LIMIT') ? 0 : 1 };
  },

  /** Magnetic variation at a decimal year. */
  variation: ({ year, heightKm, latitude, longitude }: VariationInput) => {
    const start = Date.UTC(Math.floor(year), 0, 1);
    const length = Date.UTC(Math.floor(year) + 1, 0, 1) - start;
    const moment = new Date(start + (year % 1) * length).toISOString();
    const place = { latitudeDeg: latitude, longitudeDeg: longitude, elevationM: heightKm * 1000 };
    return { variation: variationAt(place, moment).variationDeg };
  },
};

interface VariationInput {
  year: number;
  heightKm: number;
  latitude: number;
  longitude: number;
}
