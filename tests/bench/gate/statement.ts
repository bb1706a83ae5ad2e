import type { Json } from './place.ts';

/** Something that a sound record says in two places, or in two figures, and that must agree. */
export interface Statement {
  /** What does not agree, if it does not. */
  says: string;
  /** How often the record speaks against it. */
  broken(record: Json, at: string): number;
}

/** Counts the entries of which a condition does not hold. */
export function brokenIn<Item>(items: readonly Item[], holds: (item: Item) => boolean): number {
  return items.filter((item) => !holds(item)).length;
}

/** Whether two figures are in order; a missing one agrees with everything. */
export function inOrder(low: number | string | undefined, high: number | string | undefined): boolean {
  return low === undefined || high === undefined || low <= high;
}

/** The moment of a time with its offset, or of the begin of a day, in ms. */
export function moment(time: string | undefined): number | undefined {
  return time === undefined ? undefined : Date.parse(time);
}
