import * as m from '../../text/generated/messages.ts';
import type { Printer } from '../../text/print.ts';

/** So many landings, in words. */
export function landingsText(landings: number, say: Printer): string {
  const figure = say.plain(landings, 0);
  return isOne(landings) ? say.text(m.counts_landing, { figure }) : say.text(m.counts_landings, { figure });
}

/** So many days, in words. */
export function daysText(days: number, say: Printer): string {
  const figure = say.plain(days, 0);
  return isOne(days) ? say.text(m.counts_day, { figure }) : say.text(m.counts_days, { figure });
}

/** One, or one too many. */
const isOne = (count: number): boolean => Math.abs(count) === 1;
