import geomagnetism from 'geomagnetism';
import { dateOf, instantOf, utcTimestamp } from '../../units/calendar.ts';
import type { Variation } from './compass-result.ts';
import type { Place } from './place.ts';

// The World Magnetic Model is published by others: the package is pure and is compared with published tables in
// tests. It serves an edition for five years from the day of its publication; the edition itself is made for five
// years from the beginning of a year. Its field is linear in time, so two of the served days give every day.

/** An edition of the model. */
interface Edition {
  /** First and last day that it is used for. */
  from: string;
  until: string;
  /** Two days on which the package serves it. */
  served: readonly [string, string];
}

/**
 * Oldest first; years by NOAA, from memory. Edition 2015 was replaced within its five years, on the day that the package names.
 */
const EDITIONS: readonly [Edition, ...Edition[]] = [
  { from: '2015-01-01', until: '2018-09-17', served: ['2015-01-01', '2018-01-01'] },
  { from: '2018-09-18', until: '2019-12-31', served: ['2019-01-01', '2019-12-01'] },
  { from: '2020-01-01', until: '2024-12-31', served: ['2020-01-01', '2024-01-01'] },
  { from: '2025-01-01', until: '2029-12-31', served: ['2025-01-01', '2029-01-01'] },
];

/**
 * Returns the variation by the World Magnetic Model. Outside its years the nearest edition is evaluated on its first or
 * last day; the dates in the result show it.
 *
 * @source World Magnetic Model, by geomagnetism 0.2; checked against the test values that NOAA published
 */
export function variationAt({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): Variation {
  const day = dateOf(utcTimestamp(instantOf(moment)));
  const edition = EDITIONS.findLast(({ from }) => from <= day) ?? EDITIONS[0];
  const years = decimalYear(within(edition, moment));
  const at = [latitudeDeg, longitudeDeg, elevationM / 1000];
  const field = (date: string) => {
    const model = geomagnetism.model(new Date(startOf(date)));
    return { years: decimalYear(startOf(date)), name: model.name, ...model.point(at) };
  };
  const [first, second] = [field(edition.served[0]), field(edition.served[1])];
  const share = (years - first.years) / (second.years - first.years);
  const part = (axis: 'x' | 'y'): number => first[axis] + share * (second[axis] - first[axis]);
  return {
    variationDeg: (Math.atan2(part('y'), part('x')) * 180) / Math.PI,
    model: first.name,
    validFrom: edition.from,
    validUntil: edition.until,
  };
}

function within({ from, until }: Edition, moment: string): number {
  return Math.min(Math.max(instantOf(moment), startOf(from)), instantOf(`${until}T23:59:59Z`));
}

const startOf = (date: string): number => instantOf(`${date}T00:00:00Z`);

/** Returns an instant as a year with decimals, as the tables of the model state it. */
function decimalYear(instantMs: number): number {
  const year = new Date(instantMs).getUTCFullYear();
  const [start, end] = [Date.UTC(year), Date.UTC(year + 1)];
  return year + (instantMs - start) / (end - start);
}
