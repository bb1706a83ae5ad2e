import type { Count } from '../../record/counts.ts';
import type { Visit } from '../../record/visit.ts';
import { totalCount } from '../lives/counting.ts';
import { totalHours } from '../lives/total-hours.ts';
import type { OpenItem, ReadCounter, ReadFor, Readings, ReadMeter } from './open-item-result.ts';

export type { Readings, ReadMeter } from './open-item-result.ts';

export const NO_READINGS: Readings = { meters: [] };

/**
 * Merges the readings of a visit into earlier ones: meters and counters that it did not read keep their last reading.
 *
 * @param readFor the pack, once the visit has one. After a withdrawal the reading is only an upper bound
 * @source common practice, no source
 */
export function readingsWith(
  before: Readings,
  { meters, lives }: Pick<Visit, 'meters' | 'lives'>,
  readFor: ReadFor = {},
): Readings {
  const isNews = readFor.isWithdrawn
    ? (now: number, then: number | undefined) => then === undefined || now > then
    : () => true;
  const own = (meters?.readings ?? [])
    .map((meter): ReadMeter => ({ id: meter.id, of: meter.of, hours: totalHours(meter), ...readFor }))
    .filter((meter) => isNews(meter.hours, sameMeter(before, meter)?.hours));
  const others = before.meters.filter((meter) => !sameMeter({ meters: own }, meter));
  const count = meters?.landings;
  const landings =
    count !== undefined && isNews(count, before.landings?.count) ? { count, ...readFor } : before.landings;
  const counted = (meters?.counters ?? [])
    .map((counter): ReadCounter => {
      const { id, counts, of } = counter;
      return { id, counts, of, count: totalCount(counter), ...readFor };
    })
    .filter((counter) => isNews(counter.count, sameCounter(before, counter)?.count));
  const counters = [...counted, ...(before.counters ?? []).filter((each) => !sameCounter({ counters: counted }, each))];
  const hoursPerYear = lives?.hoursPerYear ?? before.hoursPerYear;
  return {
    meters: [...own, ...others],
    ...(landings && { landings }),
    ...(counters.length > 0 && { counters }),
    ...(hoursPerYear !== undefined && { hoursPerYear }),
  };
}

/** Returns the reading of the same meter. */
export function sameMeter({ meters }: Readings, { id, of }: Pick<ReadMeter, 'id' | 'of'>): ReadMeter | undefined {
  return meters.find((meter) => meter.id === id && meter.of === of);
}

/** Returns the reading of the same counter. */
export function sameCounter(
  { counters = [] }: Pick<Readings, 'counters'>,
  { id, counts, of }: Pick<ReadCounter, 'id' | 'counts' | 'of'>,
): ReadCounter | undefined {
  return counters.find((counter) => counter.id === id && counter.counts === counts && counter.of === of);
}

/**
 * Returns the total hours that an item counts: of its meter, or of the first that counts its product if the newest
 * reading of that product is from another. Undefined if the product was never read.
 */
export function hoursRead({ meters }: Readings, { of, meter }: Pick<OpenItem, 'of' | 'meter'>): number | undefined {
  const ofProduct = meters.filter((each) => each.of === of);
  const newest = ofProduct.filter(({ pack }) => pack === ofProduct[0]?.pack);
  return (newest.find(({ id }) => id === meter) ?? newest[0])?.hours;
}

/**
 * Returns the total that an item counts: of its counter, and no other; landings without a counter are those of the log
 * book. Undefined if it was never read.
 */
export function countRead(
  readings: Readings,
  counts: Count,
  { counters }: Pick<OpenItem, 'counters'>,
): number | undefined {
  const counter = counters?.find((each) => each.counts === counts);
  if (counter?.id !== undefined) return sameCounter(readings, { ...counter, id: counter.id })?.count;
  return counts === 'landings' ? readings.landings?.count : undefined;
}
