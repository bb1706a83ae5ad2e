import type { Hit, Hits } from './rule.ts';

/** A hit in an entry of a list of the record; `field` is the way from the entry on. */
export interface EntryHit extends Omit<Hit, 'path'> {
  field?: string | readonly (string | number)[];
}

/** Collects the hits of each item. */
export function hits<Item, Of = Hit>(
  items: readonly Item[] | undefined,
  hitsOf: (item: Item, index: number) => Hits<Of>,
): Of[] {
  return (items ?? []).flatMap((item, index) => hitsOf(item, index) ?? []);
}

/**
 * Collects the hits of each entry of a list of the record, and completes their paths.
 *
 * @example hitsIn(['wiring', 'wires'], visit.wiring?.wires, ({ mark }) => (mark ? undefined : { field: 'mark', sentence }))
 */
export function hitsIn<Item>(
  path: readonly string[],
  list: readonly Item[] | undefined,
  hitsOf: (entry: Item, index: number) => Hits<EntryHit>,
): Hit[] {
  return hits(list, (entry, index) =>
    hits([hitsOf(entry, index) ?? []].flat(), ({ field = [], ...rest }) => ({
      ...rest,
      path: [...path, index, ...[field].flat()],
    })),
  );
}
