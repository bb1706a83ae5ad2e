import geomagnetism from 'geomagnetism';
import { dateOf, instantOf } from '../../units/calendar.ts';
import type { Variation } from './compass-result.ts';
import type { Place } from './place.ts';

// The World Magnetic Model is published by others: the package is pure and is compared with published tables in
// tests.

/** First and last time for which the package has an edition; outside them it would write to the console. */
const FIRST_MS = Date.parse('2014-12-15T07:00:00Z');
const LAST_MS = Date.parse('2029-11-13T03:00:00Z');

/**
 * Returns the variation by the World Magnetic Model. Outside its years the nearest edition is evaluated on its first or
 * last day; the dates in the result show it.
 *
 * @source World Magnetic Model, by geomagnetism 0.2; checked against the test values that NOAA published
 */
export function variationAt({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): Variation {
  const date = new Date(Math.min(Math.max(instantOf(moment), FIRST_MS), LAST_MS));
  const model = geomagnetism.model(date);
  const { decl } = model.point([latitudeDeg, longitudeDeg, elevationM / 1000]);
  return {
    variationDeg: decl,
    model: model.name,
    validFrom: dateOf(model.start_date.toISOString()),
    validUntil: dateOf(model.end_date.toISOString()),
  };
}
