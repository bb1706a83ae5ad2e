import { COUNTS, type Count } from '../../record/counts.ts';
import { counterName, hoursOnMeter, type NamedCounter, type NamedMeter } from '../../record/meter-name.ts';
import type { Visit } from '../../record/visit.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { countText } from './counts.ts';

type Counters = readonly NamedCounter[] | undefined;

/** Limit of an item due: a date, hours on a meter (the airframe's if none is named), and counts. */
export interface DueBy extends NamedMeter, Partial<Record<Count, number | undefined>> {
  date?: string | undefined;
  hours?: number | undefined;
  counters?: Counters | undefined;
  dueAfter?: 'all' | undefined;
}

/**
 * Returns the limits of an item due, such as `5 Jan 2027 or 1 250.0 h, airframe`; undefined without a limit.
 */
export function dueLimit(visit: Pick<Visit, 'meters'>, due: DueBy, fmt: Formatter): string | undefined {
  const { date, hours, meter, of } = due;
  const limits = [
    date === undefined ? '' : fmt.date(date),
    hours === undefined ? '' : hoursOnMeter(visit, { hours, meter, of }, fmt, 'most'),
    ...countTexts(visit, due, due.counters, fmt),
  ].filter(Boolean);
  const joined = limits.reduce((first: string | undefined, second) => eitherOf(fmt, first, second), undefined);
  return due.dueAfter === 'all' && joined && limits.length > 1 ? fmt.text(m.dueLimit_last, { limits: joined }) : joined;
}

/** Returns the counts that have a value, each with its counter: `1 240 launches`, `412 cycles, battery (pack-a)`. */
export function countTexts(
  visit: Pick<Visit, 'meters'>,
  values: Partial<Record<Count, number | undefined>>,
  counters: Counters,
  fmt: Formatter,
): string[] {
  return COUNTS.flatMap((counts) => {
    const value = values[counts];
    if (value === undefined) return [];
    const counter = counters?.find((each) => each.counts === counts);
    return [[countText(counts, value, fmt), counter && counterName(visit, counter, fmt)].filter(Boolean).join(', ')];
  });
}

/** Joins two limits of which either may be missing. */
export function eitherOf(fmt: Formatter, first: string | undefined, second: string | undefined): string | undefined {
  return first && second ? fmt.text(m.dueLimit_or, { first, second }) : first || second || undefined;
}
