import { hoursOnMeter, type NamedMeter } from '../../record/meter-name.ts';
import type { Visit } from '../../record/visit.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

/** Limit of an item due: a date, hours on a meter (the airframe's if none is named), or both. */
export interface DueBy extends NamedMeter {
  date?: string | undefined;
  hours?: number | undefined;
}

/** Returns the limits of an item due, such as `5 Jan 2027 or 1 250.0 h, airframe`; undefined without a limit. */
export function dueLimit(
  visit: Pick<Visit, 'meters'>,
  { date, hours, ...named }: DueBy,
  fmt: Formatter,
): string | undefined {
  const byHours = hours === undefined ? undefined : hoursOnMeter(visit, { hours, ...named }, fmt, 'most');
  return eitherOf(fmt, date && fmt.date(date), byHours);
}

/** Joins two limits of which either may be missing. */
export function eitherOf(fmt: Formatter, first: string | undefined, second: string | undefined): string | undefined {
  return first && second ? fmt.text(m.dueLimit_or, { first, second }) : first || second || undefined;
}
