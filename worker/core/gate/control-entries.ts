import type { ControlAxis } from '../record/control-check.ts';
import type { Visit } from '../record/visit.ts';
import { type EntryHit, hitsIn } from './hits.ts';
import type { Hit, Hits } from './rule.ts';

interface Entry {
  axis: ControlAxis;
  control?: string | undefined;
}

/** Collects the hits of every control that was disturbed or checked. */
export function hitsInControls({ controls }: Visit, hitsOf: (entry: Entry) => Hits<EntryHit>): Hit[] {
  const lists: Readonly<Record<'disturbed' | 'checks', readonly Entry[] | undefined>> = {
    disturbed: controls?.disturbed,
    checks: controls?.checks,
  };
  return (['disturbed', 'checks'] as const).flatMap((list) => hitsIn(['controls', list], lists[list], hitsOf));
}
