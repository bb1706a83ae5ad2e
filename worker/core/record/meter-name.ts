import type { Bound, Formatter } from '../text/formatter.ts';
import type { Count } from './counts.ts';
import type { Visit } from './visit.ts';

type Meter = Pick<NonNullable<Visit['meters']>['readings'][number], 'id' | 'of' | 'basis'>;
type Product = Meter['of'];
type Counter = NonNullable<NonNullable<Visit['meters']>['counters']>[number];

/** A meter by its identifier; without one, or if the record has no such meter, the one of a product. */
export interface NamedMeter {
  meter?: string | undefined;
  /**
   * @default airframe, if no meter is named
   */
  of?: Product | undefined;
}

/** Returns the printed name of a meter's hours: its product, and the way of counting if the product has several meters. */
export function meterName({ meters }: Pick<Visit, 'meters'>, { meter, of }: NamedMeter, fmt: Formatter): string {
  const readings = meters?.readings ?? [];
  const found = readings.find((reading) =>
    meter === undefined ? reading.of === (of ?? 'airframe') : reading.id === meter,
  );
  if (!found) return of === undefined && meter !== undefined ? meter : fmt.term(of ?? 'airframe');
  const isOnly = readings.filter((reading) => reading.of === found.of).length === 1;
  return isOnly ? fmt.term(found.of) : countedName(readings, found, fmt);
}

/**
 * Returns the name of a meter: its product and way of counting, and its identifier if two meters agree in both.
 *
 * @example countedName(readings, tacho, fmt)  // 'engine (tacho)'
 */
export function countedName(readings: readonly Meter[], { id, of, basis }: Meter, fmt: Formatter): string {
  const isAlone = readings.filter((other) => other.of === of && other.basis === basis).length === 1;
  return `${fmt.term(of)} (${[fmt.term(basis), ...(isAlone ? [] : [id])].join(', ')})`;
}

/**
 * Returns hours with the meter they are read on: meters do not agree.
 *
 * @param bound direction of a limit
 * @example hoursOnMeter(visit, { hours: 963.6, meter: 'engine' }, fmt, 'most')  // '963.6 h, engine'
 */
export function hoursOnMeter(
  visit: Pick<Visit, 'meters'>,
  { hours, ...named }: { hours: number } & NamedMeter,
  fmt: Formatter,
  bound?: Bound,
): string {
  return `${fmt.plain(hours, 1, bound)}\u00a0h, ${meterName(visit, named, fmt)}`;
}

/** A counter by its identifier; without one, the landings of the log book. */
export interface NamedCounter {
  id?: string | undefined;
  counts: Count;
  of: Counter['of'];
}

/**
 * Returns the name of a counter: its product, and its identifier unless it is the only one of the record that counts the
 * same of it; empty for the only one of the airframe, which is the usual.
 *
 * @example counterName(visit, { id: 'pack-a', counts: 'cycles', of: 'battery' }, fmt)  // 'battery (pack-a)'
 */
export function counterName(
  { meters }: Pick<Visit, 'meters'>,
  { id, counts, of }: NamedCounter,
  fmt: Formatter,
): string {
  const same = (meters?.counters ?? []).filter((each) => each.counts === counts && each.of === of);
  const isLogged = counts === 'landings' && of === 'airframe' && meters?.landings !== undefined;
  const isOnly = same.length === 1 && same[0]?.id === id && !isLogged;
  if (id === undefined || isOnly) return of === 'airframe' ? '' : fmt.term(of);
  return `${fmt.term(of)} (${id})`;
}
