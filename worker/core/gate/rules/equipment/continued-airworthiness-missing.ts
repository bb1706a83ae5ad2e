import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const continuedAirworthinessMissing: Rule = {
  code: 'CONTINUED_AIRWORTHINESS_MISSING',
  severity: 'caution',
  meaning: 'A modification says nothing about keeping it airworthy',
  remedy: m.continuedAirworthinessMissing_remedy,
  source: read('CS-STAN; AMC M.A.305(d)'),
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, continuedAirworthiness }, index): Hit[] =>
      continuedAirworthiness?.length
        ? []
        : [
            {
              path: ['modifications', index, 'continuedAirworthiness'],
              sentence: said(m.continuedAirworthinessMissing_modificationNoInstructionsContinued, { id }),
              data: { modification: id },
            },
          ],
    ),
};
