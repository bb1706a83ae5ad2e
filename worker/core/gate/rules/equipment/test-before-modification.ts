import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const testBeforeModification: Rule = {
  code: 'TEST_BEFORE_MODIFICATION',
  severity: 'blocks',
  meaning: 'A test is older than the end of the work that it tests',
  remedy: m.testBeforeModification_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, finishedAt, tests }, index) =>
      (tests ?? []).flatMap(({ text, doneAt }, step): Hit[] => {
        if (!doneAt || instantOf(doneAt) >= instantOf(finishedAt)) return [];
        return [
          {
            path: ['modifications', index, 'tests', step, 'doneAt'],
            sentence: said(m.testBeforeModification_modificationDoneBeforeWork, { id, text }),
            data: { modification: id },
          },
        ];
      }),
    ),
};
