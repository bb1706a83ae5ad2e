import type { Conductor } from '../../calc/electrical/wire-table.ts';

/**
 * Size of a wire in a table; aluminium is marked.
 *
 * @example printGauge({ gauge: '2', material: 'aluminium' })  // '2 Al'
 */
export function printGauge({ gauge, material }: Conductor): string {
  return material === 'aluminium' ? `${gauge} Al` : gauge;
}
