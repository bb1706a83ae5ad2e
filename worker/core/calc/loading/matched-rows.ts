import type { WaterStation } from '../../record/visit.ts';

type Table = NonNullable<WaterStation['matched']>['table'];

/**
 * Returns the table of matched ballast from its lowest water on: no ballast without water, even if its first line has some.
 *
 * @source derived from glider flight manuals, read: up to the table, and never without wing water
 */
export function matchedRows(table: Table): Table {
  const withWater = table.filter(({ massKg }) => massKg > 0).sort((a, b) => a.massKg - b.massKg);
  return [{ massKg: 0, ballastKg: 0 }, ...withWater];
}
