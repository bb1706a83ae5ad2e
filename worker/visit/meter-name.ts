import type { Bound, Printer } from '../units/print.ts';
import type { Visit } from './visit.ts';

/**
 * What the hours of a meter count, as print names it: its product, and its own name beside where the product has several.
 *
 * @param meter identifier of a meter; without one, that of the airframe
 */
export function meterName({ meters }: Pick<Visit, 'meters'>, meter: string | undefined, say: Printer): string {
  const readings = meters?.readings ?? [];
  const found = readings.find(({ id, of }) => (meter === undefined ? of === 'airframe' : id === meter));
  if (!found) return meter ?? say.term('airframe');
  const isOnly = readings.filter(({ of }) => of === found.of).length === 1;
  return isOnly ? say.term(found.of) : `${say.term(found.of)} (${found.id})`;
}

/**
 * Hours with the meter that they are read on: of two meters neither is the other's.
 *
 * @param bound for a limit, which way it bounds
 * @example hoursOnMeter(visit, { hours: 963.6, meter: 'engine' }, say, 'most')  // '963.6 h, engine'
 */
export function hoursOnMeter(
  visit: Pick<Visit, 'meters'>,
  { hours, meter }: { hours: number; meter?: string | undefined },
  say: Printer,
  bound?: Bound,
): string {
  return `${say.plain(hours, 1, bound)}\u00a0h, ${meterName(visit, meter, say)}`;
}
