/** Which part of a list is asked for: items after a cursor that an earlier page gave. */
export interface PageRequest {
  after?: string;
  limit: number;
}

export interface Page<Item> {
  items: Item[];
  /** Cursor of the next page; null on the last one. */
  next: string | null;
}

/** A page out of rows read with one more than the limit, which tells whether another page follows. */
export function pageOf<Item>(rows: Item[], limit: number, cursorOf: (item: Item) => string): Page<Item> {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last ? cursorOf(last) : null };
}
