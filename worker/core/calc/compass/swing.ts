import type { Visit } from '../../record/visit.ts';
import { signedDifferenceDeg, wrap360 } from '../../units/angle.ts';
import { coefficientsOf, correctionOf, deviationAt } from './coefficients.ts';
import type { CardLine, Coefficients, CompassResult, SwingResult } from './compass-result.ts';
import { variationAt } from './variation.ts';

export type { CardLine, CompassResult, SwingResult } from './compass-result.ts';

export type CompassRecord = NonNullable<Visit['compass']>;

const CARD_STEP_DEG = 30;

/**
 * Reduces a compass swing: deviations, coefficients, residuals and the card of every 30°.
 *
 * @source sign of the deviation, and the model of the card: Handbook of Magnetic Compass Adjustment (Pub. 226), art.
 * 501
 */
export function reduceSwing(compass: CompassRecord): CompassResult {
  const variation =
    compass.reference === 'true' && compass.position ? variationAt(compass.position, compass.swungAt) : undefined;
  return {
    variation,
    swings: compass.swings.map((swing) => reduceState(swing, variation?.variationDeg ?? 0)),
    loads: (compass.loads ?? []).map(({ name, offDeg, onDeg }) => ({
      name,
      shiftDeg: signedDifferenceDeg(offDeg, onDeg),
    })),
  };
}

function reduceState({ state, readings }: CompassRecord['swings'][number], variationDeg: number): SwingResult {
  const deviations = readings.map(({ headingDeg, compassDeg }) => {
    const magneticDeg = wrap360(headingDeg - variationDeg);
    return { headingDeg: magneticDeg, compassDeg, deviationDeg: signedDifferenceDeg(compassDeg, magneticDeg) };
  });
  const coefficients = coefficientsOf(deviations);
  const swung = deviations
    .map((reading) => ({
      ...reading,
      residualDeg: coefficients && reading.deviationDeg - deviationAt(coefficients, reading.headingDeg),
    }))
    .sort((a, b) => a.headingDeg - b.headingDeg);
  return {
    state,
    readings: swung,
    coefficients,
    correction: correctionOf(deviations),
    greatestDeviationDeg: Math.max(0, ...swung.map(({ deviationDeg }) => Math.abs(deviationDeg))),
    greatestResidualDeg: Math.max(0, ...swung.map(({ residualDeg = 0 }) => Math.abs(residualDeg))),
    card: coefficients ? cardOf(coefficients) : [],
  };
}

/**
 * Returns the deviation of a line of the card: as for a reading, the heading less the compass reading on it.
 *
 * @source Handbook of Magnetic Compass Adjustment (Pub. 226), art. 501
 */
export function cardDeviationDeg({ forDeg, steerDeg }: CardLine): number {
  return signedDifferenceDeg(steerDeg, forDeg);
}

/** Returns the card of every 30°: steer = magnetic heading − deviation on it. */
function cardOf(coefficients: Coefficients): CardLine[] {
  return Array.from({ length: 360 / CARD_STEP_DEG }, (_, index) => {
    const forDeg = index * CARD_STEP_DEG;
    return { forDeg, steerDeg: wrap360(forDeg - deviationAt(coefficients, forDeg)) };
  });
}
