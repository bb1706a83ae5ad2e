import type { Printer } from '../../text/print.ts';

/** So many landings, in words. */
export function landingsText(landings: number, say: Printer): string {
  const figure = say.plain(landings, 0);
  return isOne(landings) ? say.words`${figure} landing` : say.words`${figure} landings`;
}

/** So many days, in words. */
export function daysText(days: number, say: Printer): string {
  const figure = say.plain(days, 0);
  return isOne(days) ? say.words`${figure} day` : say.words`${figure} days`;
}

/** One, or one too many. */
const isOne = (count: number): boolean => Math.abs(count) === 1;
