import type { Printer } from '../../units/print.ts';

/** So many landings, in words. */
export function landingsText(landings: number, say: Printer): string {
  return landings === 1 ? say.words`1 landing` : say.words`${say.plain(landings, 0)} landings`;
}

/** So many days, in words. */
export function daysText(days: number, say: Printer): string {
  return days === 1 ? say.words`1 day` : say.words`${say.plain(days, 0)} days`;
}
