import type { Conductor } from '../calc/electrical/wire-table.ts';
import { nodeKey } from '../calc/wiring/pin-graph.ts';
import type { Wire } from '../visit/visit.ts';

/** What a wire is called: its mark, else its ends. */
export function wireName({ mark, from, to }: Wire): string {
  return mark ?? `${nodeKey(from)} to ${nodeKey(to)}`;
}

/**
 * What a conductor is called in a sentence.
 *
 * @example conductorName({ gauge: '8', material: 'aluminium' })  // '8 AWG aluminium'
 */
export function conductorName({ gauge, material = 'copper' }: Conductor): string {
  return material === 'copper' ? `${gauge} AWG` : `${gauge} AWG ${material}`;
}
