/** Requested part of a list: items after the cursor of an earlier page. */
export interface PageRequest {
  after?: string;
  limit: number;
}

export interface Page<Item> {
  items: Item[];
  /** Cursor of the next page; null on the last one. */
  next: string | null;
}

/** Returns a page from rows read with one more than the limit, which shows whether another page follows. */
export function pageOf<Item>(rows: Item[], limit: number, cursorOf: (item: Item) => string): Page<Item> {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last ? cursorOf(last) : null };
}
