import type { Item } from './from-csv.ts';
import { SHEETS, type SheetName } from './sheet.ts';

/** Returns the items of a record in a sheet; none if the record has no such part. */
export function itemsIn(name: SheetName, record: unknown): Item[] {
  const found = SHEETS[name].place.reduce<unknown>((at, step) => (at as Item | null | undefined)?.[step], record);
  return Array.isArray(found) ? found : [];
}

/**
 * Returns a record with its items replaced; everything else is unchanged. An empty table adds nothing: a part with an
 * empty list and no other field is not a record.
 */
export function intoRecord(name: SheetName, record: unknown, items: readonly Item[]): Item {
  if (items.length === 0 && itemsIn(name, record).length === 0) return record as Item;
  const place = (within: unknown, [step, ...rest]: readonly string[]): unknown =>
    step === undefined
      ? items
      : { ...(within as Item | undefined), [step]: place((within as Item | undefined)?.[step], rest) };
  return place(record, SHEETS[name].place) as Item;
}
