import type { Bound, Printer } from '../units/print.ts';
import type { Visit } from './visit.ts';

type Product = NonNullable<Visit['meters']>['readings'][number]['of'];

/** A meter by its identifier; without one, or where the record has no such meter, the one of a product. */
export interface NamedMeter {
  meter?: string | undefined;
  /** @default the airframe, for what names no meter */
  of?: Product | undefined;
}

/**
 * What the hours of a meter count, as print names it: its product, and where the product has several meters how this one counts. Where
 * that is the same for two of them, as for two engines, the name by which the record calls it.
 */
function meterName({ meters }: Pick<Visit, 'meters'>, { meter, of }: NamedMeter, say: Printer): string {
  const readings = meters?.readings ?? [];
  const found = readings.find((reading) =>
    meter === undefined ? reading.of === (of ?? 'airframe') : reading.id === meter,
  );
  if (!found) return of === undefined && meter !== undefined ? meter : say.term(of ?? 'airframe');
  const others = readings.filter((reading) => reading.of === found.of && reading !== found);
  if (others.length === 0) return say.term(found.of);
  const isAlike = others.some(({ basis }) => basis === found.basis);
  return `${say.term(found.of)} (${isAlike ? found.id : say.term(found.basis)})`;
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
  say: Printer,
  bound?: Bound,
): string {
  return `${say.plain(hours, 1, bound)}\u00a0h, ${meterName(visit, named, say)}`;
}
