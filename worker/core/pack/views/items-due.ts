import { productNamed, shiftOf } from '../../calc/lives/product-time.ts';
import type { OpenItem, OpenLimit } from '../../calc/open-items/open-item.ts';
import { dueItems, type OpenDue } from '../../calc/open-items/time-left.ts';
import { NUMBER_CLOCKS, type NumberClock } from '../../record/counts.ts';
import { hoursOnMeter } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { countText, daysText } from './counts.ts';
import { countTexts } from './due-limit.ts';
import { openUntil } from './open-items.ts';

/** Returns the items due at the time of the pack. */
export const itemsDue = ({ visit, results, issuedAt, fmt }: PackContext): OpenDue[] =>
  dueItems(results.open.standing, visit, results.readings, fmt.local(issuedAt));

/** Joins texts, without empty ones. */
export const listed = (parts: readonly string[]): string => parts.filter(Boolean).join('; ') || DASH;

/** Returns the limits of an item, each with its meter or counter. */
export const limitText = (context: PackContext, due: OpenDue): string => openUntil(context, due) ?? DASH;

/** Returns what is left of an item on each clock. */
export function leftText({ visit, fmt }: PackContext, due: OpenDue): string {
  const { daysLeft, hoursLeft: hours, landingsLeft, countsLeft, meter, of, counters } = due;
  return listed([
    daysLeft === undefined ? '' : daysText(daysLeft, fmt),
    hours === undefined ? '' : hoursOnMeter(visit, { hours, meter, of }, fmt, 'most'),
    ...countTexts(visit, { landings: landingsLeft, ...countsLeft }, counters, fmt),
  ]);
}

/** Returns hours or a count without its meter. */
export function clockText(clock: NumberClock, value: number, fmt: Formatter): string {
  return clock === 'hours' ? `${fmt.plain(value, 1)}\u00a0h` : countText(clock, value, fmt);
}

/** Totals of an item, divided into the time since new of its product, in words, and the totals that are not. */
interface Divided {
  sinceNew: string | undefined;
  others: OpenLimit;
}

/** Returns the totals of an item in the time since new of its product, as far as the product states it. */
export function sinceNewText({ visit, fmt }: PackContext, { product }: OpenItem, totals: OpenLimit): Divided {
  const own = productNamed(visit.aircraft, product);
  const others = { ...totals };
  const texts = NUMBER_CLOCKS.flatMap((clock) => {
    const [shift, total] = [shiftOf(own, clock), totals[clock]];
    if (shift === undefined || total === undefined) return [];
    delete others[clock];
    return [clockText(clock, total - shift, fmt)];
  });
  return { sinceNew: texts.length === 0 ? undefined : fmt.text(m.sinceNew, { time: texts.join('; ') }), others };
}
