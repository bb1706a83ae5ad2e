import type { FoundWire } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const wireMarkMissing: Rule = {
  code: 'WIRE_MARK_MISSING',
  severity: 'caution',
  meaning: 'A wire that stays in the aircraft has no mark',
  remedy: m.wireMarkMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { wires = [], found = [] } = visit.wiring ?? {};
    const bare = (path: Hit['path'], name: Value, wire: string): Hit => ({
      path,
      sentence: said(m.wireMarkMissing_wireNoMark, { name }),
      data: { wire },
    });
    return [
      ...wires.flatMap((wire, index) =>
        wire.change === 'removed' || wire.mark !== undefined
          ? []
          : [bare(['wiring', 'wires', index, 'mark'], wireName(wire), wireKey(wire))],
      ),
      ...found.flatMap(({ decision, mark, id }, index) =>
        !STAYS.has(decision) || mark !== undefined ? [] : [bare(['wiring', 'found', index, 'mark'], id, id)],
      ),
    ];
  },
};

/** A capped wire stays too, and the next who finds it should not have to trace it again. */
const STAYS: ReadonlySet<FoundWire['decision']> = new Set(['traced', 'retained', 'capped']);
