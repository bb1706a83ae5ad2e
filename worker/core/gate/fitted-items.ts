import type { Results } from '../calc/results.ts';
import type { EquipmentItem } from '../record/visit.ts';

/** An item that was fitted at this visit. */
export interface FittedItem {
  item: EquipmentItem;
  /** Its entry in the parts trace. */
  part: string | undefined;
  path: readonly (string | number)[];
}

/** Returns every item that was fitted at this visit, alone or for another. */
export function fittedItems({ change }: Pick<Results, 'change'>): FittedItem[] {
  return change.changes.flatMap(({ change: each, path }): FittedItem[] => {
    if (each.kind === 'installed') return [{ item: each, part: each.part, path }];
    if (each.kind === 'replaced') return [{ item: each.by, part: each.part, path: [...path, 'by'] }];
    return [];
  });
}
