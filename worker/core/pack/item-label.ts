import type { PackContext } from './context.ts';

/** Returns the identifier and name of a line of the equipment list; empty without one. */
export function itemLabel({ results }: Pick<PackContext, 'results'>, id: string | undefined): string {
  if (id === undefined) return '';
  const item = results.change.after.find((line) => line.id === id);
  return item ? `${id} ${item.name}` : id;
}
