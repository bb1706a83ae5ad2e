import type { Visit } from '../../record/visit.ts';
import { signedDifferenceDeg } from '../../units/angle.ts';
import { limited, limitedDifference } from '../surveillance/limited.ts';
import type { MeasurementsResult } from './measurements-result.ts';

export type Measurements = NonNullable<Visit['measurements']>;

const BALANCE_UNITS = { vibration: 'in/s', 'track-split': 'mm' } as const;

/**
 * Compares torques, heading errors of magnetometers, and vibration or track split of rotors and propellers with the
 * limits that the record states. The error of a heading is the reading less the heading, in degrees, the shorter way
 * round.
 *
 * @source definition; the limits are those of the manufacturer, as the record states them
 */
export function measurementResults({
  torques = [],
  magnetometers = [],
  balances = [],
}: Measurements): MeasurementsResult {
  return {
    torques: torques.map(({ value, unit, from, to }) => limited('torque', value, unit, { least: from, most: to })),
    magnetometers: magnetometers.map(({ limitDeg, readings }) => ({
      figures: readings.map(({ headingDeg, compassDeg }) => ({
        ...limitedDifference('heading-error', turned(headingDeg, compassDeg), '°', limitDeg),
        at: { value: headingDeg, unit: '°' },
      })),
    })),
    balances: balances.map(({ readings }) => ({
      figures: readings.map(({ what, value, limit }) => limited(what, value, BALANCE_UNITS[what], { most: limit })),
    })),
  };
}

/** Returns the reading, beyond the full circle if that is the shorter way from the heading. */
function turned(headingDeg: number, compassDeg: number): { read: number; against: number } {
  return { read: headingDeg + signedDifferenceDeg(headingDeg, compassDeg), against: headingDeg };
}
