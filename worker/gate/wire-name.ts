import { nodeKey } from '../calc/wiring/pin-graph.ts';
import type { Wire } from '../visit/visit.ts';

/** What a wire is called: its mark, else its ends. */
export function wireName({ mark, from, to }: Wire): string {
  return mark ?? `${nodeKey(from)} to ${nodeKey(to)}`;
}
