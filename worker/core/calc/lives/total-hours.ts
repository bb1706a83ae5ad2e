import type { Visit } from '../../record/visit.ts';

type Meter = NonNullable<Visit['meters']>['readings'][number];

/**
 * Returns the total hours at release by a meter: its reading plus the count of an earlier meter.
 *
 * @source common practice, no source
 */
export function totalHours({ outHours, offsetHours = 0 }: Meter): number {
  return outHours + offsetHours;
}

/**
 * Returns the total hours of a product at release; undefined if no meter counts them.
 *
 * @source common practice, no source
 */
export function hoursOf({ meters }: Pick<Visit, 'meters'>, product: Meter['of']): number | undefined {
  const meter = meters?.readings.find(({ of }) => of === product);
  return meter && totalHours(meter);
}
