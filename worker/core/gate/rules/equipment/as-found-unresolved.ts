import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const asFoundUnresolved: Rule = {
  code: 'AS_FOUND_UNRESOLVED',
  severity: 'caution',
  meaning: 'The aircraft differs from its records, and the action is not decided',
  remedy: m.asFoundUnresolved_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['asFound'], visit.asFound, ({ disposition, kind }) => {
      if (disposition) return undefined;
      return {
        field: 'disposition',
        sentence: said(m.asFoundUnresolved_lineSurveyNoDisposition, { kind: termOf(kind) }),
        data: { kind },
      };
    }),
};
