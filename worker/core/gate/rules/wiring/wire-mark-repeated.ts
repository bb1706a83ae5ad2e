import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const wireMarkRepeated: Rule = {
  code: 'WIRE_MARK_REPEATED',
  severity: 'blocks',
  meaning: 'Two wires have the same mark',
  remedy: m.wireMarkRepeated_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { wires = [], found = [] } = visit.wiring ?? {};
    const marked = [
      ...wires.map(({ mark, change }, index) => ({
        mark: change === 'removed' ? undefined : mark,
        path: ['wiring', 'wires', index, 'mark'],
      })),
      ...found.map(({ mark, decision }, index) => ({
        mark: decision === 'removed' ? undefined : mark,
        path: ['wiring', 'found', index, 'mark'],
      })),
    ];
    const seen = new Set<string>();
    return hits(marked, ({ mark, path }) => {
      if (mark === undefined) return undefined;
      if (seen.has(mark))
        return { path, sentence: said(m.wireMarkRepeated_markStandsMoreThan, { mark }), data: { mark } };
      seen.add(mark);
      return undefined;
    });
  },
};
