import type { Bound, Formatter } from '../text/formatter.ts';
import type { Visit } from './visit.ts';

type Meter = Pick<NonNullable<Visit['meters']>['readings'][number], 'id' | 'of' | 'basis'>;
type Product = Meter['of'];

/** A meter by its identifier; without one, or where the record has no such meter, the one of a product. */
export interface NamedMeter {
  meter?: string | undefined;
  /** @default the airframe, for what names no meter */
  of?: Product | undefined;
}

/** What the hours of a meter count, as print names it: its product, and how it counts where the product has several. */
function meterName({ meters }: Pick<Visit, 'meters'>, { meter, of }: NamedMeter, fmt: Formatter): string {
  const readings = meters?.readings ?? [];
  const found = readings.find((reading) =>
    meter === undefined ? reading.of === (of ?? 'airframe') : reading.id === meter,
  );
  if (!found) return of === undefined && meter !== undefined ? meter : fmt.term(of ?? 'airframe');
  const isOnly = readings.filter((reading) => reading.of === found.of).length === 1;
  return isOnly ? fmt.term(found.of) : countedName(readings, found, fmt);
}

/**
 * A meter by its product and how it counts. Of two that are alike in both, the identifier tells which.
 *
 * @example countedName(readings, tacho, say)  // 'engine (tacho)'
 */
export function countedName(readings: readonly Meter[], { id, of, basis }: Meter, fmt: Formatter): string {
  const isAlone = readings.filter((other) => other.of === of && other.basis === basis).length === 1;
  return `${fmt.term(of)} (${[fmt.term(basis), ...(isAlone ? [] : [id])].join(', ')})`;
}

/**
 * Hours with the meter that they are read on: of two meters neither is the other's.
 *
 * @param bound for a limit, which way it bounds
 * @example hoursOnMeter(visit, { hours: 963.6, meter: 'engine' }, say, 'most')  // '963.6 h, engine'
 */
export function hoursOnMeter(
  visit: Pick<Visit, 'meters'>,
  { hours, ...named }: { hours: number } & NamedMeter,
  fmt: Formatter,
  bound?: Bound,
): string {
  return `${fmt.plain(hours, 1, bound)}\u00a0h, ${meterName(visit, named, fmt)}`;
}
