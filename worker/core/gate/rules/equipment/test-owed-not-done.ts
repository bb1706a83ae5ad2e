import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const testOwedNotDone: Rule = {
  code: 'TEST_OWED_NOT_DONE',
  severity: 'blocks',
  meaning: 'A test that a modification calls for was not done or failed',
  remedy: m.testOwedNotDone_remedy,
  source: read('AMC M.A.305(d) (test programme and results)'),
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, tests }, index) =>
      (tests ?? []).flatMap(({ text, result }, step): Hit[] => {
        if (result === 'passed' || result === 'after-release') return [];
        return [
          {
            path: ['modifications', index, 'tests', step, 'result'],
            sentence:
              result === 'failed'
                ? said(m.testOwedNotDone_modificationFailed, { id, text })
                : said(m.testOwedNotDone_modificationNotDone, { id, text }),
            data: { modification: id, result },
          },
        ];
      }),
    ),
};
