import type { Conductor } from '../../calc/electrical/wire-table.ts';

/**
 * Returns the size of a wire for a table; aluminium is marked.
 *
 * @example printGauge({ gauge: '2', material: 'aluminium' })  // '2 Al'
 */
export function printGauge({ gauge, material }: Conductor): string {
  return material === 'aluminium' ? `${gauge} Al` : gauge;
}
