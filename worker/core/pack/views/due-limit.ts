import { hoursOnMeter, type NamedMeter } from '../../record/meter-name.ts';
import type { Visit } from '../../record/visit.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

/** When something has to be done: by a date, by hours on a meter (that of the airframe where none is named), or by both. */
export interface DueBy extends NamedMeter {
  date?: string | undefined;
  hours?: number | undefined;
}

/** The limits of something to be done, such as `5 Jan 2027 or 1 250.0 h, airframe`; undefined where there is none. */
export function dueLimit(
  visit: Pick<Visit, 'meters'>,
  { date, hours, ...named }: DueBy,
  fmt: Formatter,
): string | undefined {
  const byHours = hours === undefined ? undefined : hoursOnMeter(visit, { hours, ...named }, fmt, 'most');
  return eitherOf(fmt, date && fmt.date(date), byHours);
}

/** Two limits of which either may be missing. */
export function eitherOf(fmt: Formatter, first: string | undefined, second: string | undefined): string | undefined {
  return first && second ? fmt.text(m.dueLimit_or, { first, second }) : first || second || undefined;
}
