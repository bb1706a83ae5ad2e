import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { unrecordedChecks } from '../../check-name.ts';
import { transponderOmission } from '../../omission-text.ts';
import { type Rule, read } from '../../rule.ts';

export const transponderTestIncomplete: Rule = {
  code: 'TRANSPONDER_TEST_INCOMPLETE',
  severity: 'blocks',
  meaning: 'The transponder test lacks a part that the class of the transponder requires',
  remedy: m.transponderTestIncomplete_remedy,
  source: read('14 CFR 43 Appendix F (c)(2) and (e) to (j)'),
  check: ({ results }) => {
    const { transponderMissing = [], modeS = [] } = results.surveillance ?? {};
    const missing = [...transponderMissing.map((figure) => transponderOmission(figure)), ...unrecordedChecks(modeS)];
    if (missing.length === 0) return undefined;
    return {
      path: ['surveillance', 'transponderTest'],
      sentence: said(m.transponderTestIncomplete_transponderTestNotRecord, { missing: list(missing, '; ') }),
      data: { missing: missing.length },
    };
  },
};
