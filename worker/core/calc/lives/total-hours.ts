import type { Visit } from '../../record/visit.ts';

type Meter = NonNullable<Visit['meters']>['readings'][number];

/**
 * Total hours at release by a meter: its reading, and what an earlier meter had counted.
 *
 * @source common practice, no source
 */
export function totalHours({ outHours, offsetHours = 0 }: Meter): number {
  return outHours + offsetHours;
}

/**
 * Total hours of a product at release; undefined where no meter counts them.
 *
 * @source common practice, no source
 */
export function hoursOf({ meters }: Pick<Visit, 'meters'>, product: Meter['of']): number | undefined {
  const meter = meters?.readings.find(({ of }) => of === product);
  return meter && totalHours(meter);
}
