import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const testOwedNotDone: Rule = {
  code: 'TEST_OWED_NOT_DONE',
  severity: 'blocks',
  meaning: 'A test required by a modification was not done or failed',
  remedy: m.testOwedNotDone_remedy,
  source: read('AMC M.A.305(d) (test programme and results)'),
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, tests, flightTest }) =>
      hits(tests, ({ text, result }, step) => {
        // Only what a flight test shows can wait for it.
        const canWait = flightTest !== undefined && flightTest !== 'none' && flightTest !== 'done';
        if (result === 'passed' || (result === 'after-release' && canWait)) return undefined;
        return {
          field: ['tests', step, 'result'],
          sentence:
            result === 'failed'
              ? said(m.testOwedNotDone_modificationFailed, { id, text })
              : said(result === 'not-done' ? m.testOwedNotDone_modificationNotDone : m.testOwedNotDone_afterRelease, {
                  id,
                  text,
                }),
          data: { modification: id, result },
        };
      }),
    ),
};
