import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const wireIdentifiedByColour: Rule = {
  code: 'WIRE_IDENTIFIED_BY_COLOUR',
  severity: 'caution',
  meaning: 'A wire that stays is known by its colour alone',
  remedy: m.wireIdentifiedByColour_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, decision, identifiedBy }, index): Hit[] => {
      if (decision === 'removed' || identifiedBy !== 'colour') return [];
      return [
        {
          path: ['wiring', 'found', index, 'identifiedBy'],
          sentence: said(m.wireIdentifiedByColour_wireStaysOnlyColour, { id }),
          data: { wire: id },
        },
      ];
    }),
};
