import type { FoundWire } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const wireMarkMissing: Rule = {
  code: 'WIRE_MARK_MISSING',
  severity: 'caution',
  meaning: 'A wire that stays in the aircraft has no mark',
  remedy: m.wireMarkMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { wires = [], found = [] } = visit.wiring ?? {};
    const bare = (name: Value, wire: string): EntryHit => ({
      field: 'mark',
      sentence: said(m.wireMarkMissing_wireNoMark, { name }),
      data: { wire },
    });
    return [
      ...hitsIn(['wiring', 'wires'], wires, (wire) =>
        wire.change === 'removed' || wire.mark !== undefined ? undefined : bare(wireName(wire), wireKey(wire)),
      ),
      ...hitsIn(['wiring', 'found'], found, ({ decision, mark, id }) =>
        !STAYS.has(decision) || mark !== undefined ? undefined : bare(id, id),
      ),
    ];
  },
};

/** Decisions that leave a wire in the aircraft. A capped wire is marked too, so that nobody traces it again. */
const STAYS: ReadonlySet<FoundWire['decision']> = new Set(['traced', 'retained', 'capped']);
