import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const testUnsigned: Rule = {
  code: 'TEST_UNSIGNED',
  severity: 'blocks',
  meaning: 'A test of a modification passed, but person or time is missing',
  remedy: m.testUnsigned_remedy,
  source: read('14 CFR 43.9(a)(3) (name of the performer)'),
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, tests }) =>
      hits(tests, ({ text, result, by, doneAt }, step) =>
        result !== 'passed' || (by && doneAt)
          ? undefined
          : {
              field: ['tests', step],
              sentence: said(m.testUnsigned_passedBy, { id, text }),
              data: { modification: id },
            },
      ),
    ),
};
