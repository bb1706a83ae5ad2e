import { NUMBER_CLOCKS } from '../../record/counts.ts';
import type { Visit } from '../../record/visit.ts';
import { isFlightTestOutstanding } from '../flights/flights.ts';
import { dueList } from '../lives/due.ts';
import { clocksOf } from '../lives/product-time.ts';
import type { OpenItem, OpenLimit } from './open-item.ts';

/** An item of a record, with its path. */
export interface StatedItem extends OpenItem {
  path: (string | number)[];
}

/** Parts of a visit that can leave an item open. */
export type OpenParts = Pick<
  Visit,
  'findings' | 'lives' | 'bulletins' | 'release' | 'modifications' | 'flights' | 'meters'
> & {
  aircraft?: Visit['aircraft'];
};

/**
 * Returns all items that a record leaves open: deferred or monitored findings, items that come due, recurring or open
 * bulletins, limitations of the release, and outstanding flight tests.
 *
 * @param at time of the assessment
 * @source common practice, no source
 */
export function standsOpen(visit: OpenParts, at: string): StatedItem[] {
  return [
    ...findingsOf(visit),
    ...livesOf(visit, at),
    ...bulletinsOf(visit),
    ...limitationsOf(visit),
    ...testsOf(visit),
  ];
}

/** Returns the limits that are stated. */
const limit = (stated: { [Clock in keyof OpenLimit]?: OpenLimit[Clock] | undefined }): OpenLimit =>
  Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined));

/** Returns the product of the named meter; the airframe if none is named. */
export function namedMeter(
  { meters }: Pick<Visit, 'meters'>,
  meter: string | undefined,
): Pick<OpenItem, 'of' | 'meter'> {
  const of = meters?.readings.find(({ id }) => id === meter)?.of ?? 'airframe';
  return { of, ...(meter !== undefined && { meter }) };
}

function findingsOf(visit: OpenParts): StatedItem[] {
  return (visit.findings ?? []).flatMap((finding, index): StatedItem[] => {
    const { id, text, place, disposition, deferral, lookAgain } = finding;
    if (disposition !== 'deferred' && disposition !== 'monitor') return [];
    const kind = disposition === 'deferred' ? 'deferral' : 'watch';
    const { untilDate, untilHours, timesCarried = 0 } = deferral ?? {};
    const until =
      kind === 'watch' && lookAgain
        ? { date: lookAgain.date, hours: lookAgain.hours, landings: lookAgain.landings }
        : { date: untilDate, hours: untilHours };
    const { meter } = (kind === 'watch' && lookAgain) || deferral || {};
    return [
      {
        ...{ id, kind, text: `${place}: ${text}`, until: limit(until), path: ['findings', index] },
        ...namedMeter(visit, meter),
        ...(timesCarried > 0 && { timesCarried }),
      },
    ];
  });
}

function livesOf(visit: OpenParts, at: string): StatedItem[] {
  const { lives } = visit;
  if (!lives) return [];
  return dueList(visit, lives, at).flatMap((due): StatedItem[] => {
    const index = lives.items.findIndex((life) => life.id === due.id);
    const life = lives.items[index];
    if (!life) return [];
    const { item, basis, lastDone, toleranceHours, toleranceMonths, interval, reference } = life;
    const { named, product, shift } = clocksOf(visit, life);
    const done = NUMBER_CLOCKS.map((clock) => [
      clock,
      lastDone[clock] === undefined ? undefined : lastDone[clock] + shift(clock),
    ]);
    const { dueDate: date, dueHours: hours, dueLandings: landings, dueCounts, counters, dueAfter } = due;
    return [
      {
        ...{ id: due.id, kind: 'due', basis, text: item },
        ...(reference !== undefined && { reference }),
        until: limit({ date, hours, landings, ...dueCounts }),
        ...named,
        ...(counters && { counters }),
        ...(product && { product: { kind: product.kind, serial: product.serial } }),
        ...(dueAfter && { dueAfter }),
        done: limit({ date: lastDone.date, ...Object.fromEntries(done) }),
        ...(toleranceHours !== undefined && { toleranceHours }),
        ...(toleranceMonths !== undefined && { toleranceMonths }),
        ...(interval.toEndOfMonth && { toEndOfMonth: true }),
        path: ['lives', 'items', index],
      },
    ];
  });
}

/** A bulletin never complied with is open in every status; recommendations that were only noted are not. */
function bulletinsOf(visit: OpenParts): StatedItem[] {
  return (visit.bulletins?.items ?? []).flatMap((bulletin, index): StatedItem[] => {
    const { id, subject, kind, status, doneOn, nextDueDate, nextDueHours, meter } = bulletin;
    const isOpen = status === 'open' && (kind === 'directive' || kind === 'mandatory');
    if (status !== 'recurring' && !isOpen) return [];
    const until = limit({ date: nextDueDate, hours: nextDueHours });
    const done = limit({ date: doneOn });
    return [
      {
        id,
        kind: 'bulletin',
        basis: kind === 'directive' ? 'directive' : 'bulletin',
        text: subject,
        until,
        ...namedMeter(visit, meter),
        done,
        path: ['bulletins', 'items', index],
      },
    ];
  });
}

function limitationsOf({ release }: OpenParts): StatedItem[] {
  return (release?.limitations ?? []).map((text, index) => ({
    id: `limitation-${index + 1}`,
    kind: 'limitation',
    text,
    until: {},
    of: 'airframe',
    path: ['release', 'limitations', index],
  }));
}

function testsOf(visit: OpenParts): StatedItem[] {
  return (visit.modifications ?? []).flatMap((modification, index): StatedItem[] => {
    if (!isFlightTestOutstanding(visit, modification)) return [];
    const { id, title } = modification;
    return [{ id, kind: 'test', text: title, until: {}, of: 'airframe', path: ['modifications', index] }];
  });
}
