import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const continuedAirworthinessMissing: Rule = {
  code: 'CONTINUED_AIRWORTHINESS_MISSING',
  severity: 'caution',
  meaning: 'A modification has no instructions for continued airworthiness',
  remedy: m.continuedAirworthinessMissing_remedy,
  source: read('CS-STAN; AMC M.A.305(d)'),
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, continuedAirworthiness }) => {
      if (continuedAirworthiness?.length) return undefined;
      return {
        field: 'continuedAirworthiness',
        sentence: said(m.continuedAirworthinessMissing_modificationNoInstructionsContinued, { id }),
        data: { modification: id },
      };
    }),
};
