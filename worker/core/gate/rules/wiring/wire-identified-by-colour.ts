import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const wireIdentifiedByColour: Rule = {
  code: 'WIRE_IDENTIFIED_BY_COLOUR',
  severity: 'caution',
  meaning: 'A wire that stays was identified only by its colour',
  remedy: m.wireIdentifiedByColour_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'found'], visit.wiring?.found, ({ id, decision, identifiedBy }) => {
      if (decision === 'removed' || identifiedBy !== 'colour') return undefined;
      return {
        field: 'identifiedBy',
        sentence: said(m.wireIdentifiedByColour_wireStaysOnlyColour, { id }),
        data: { wire: id },
      };
    }),
};
