import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { omissionText } from '../../omission-text.ts';
import { type Rule, read } from '../../rule.ts';

export const altimeterTestIncomplete: Rule = {
  code: 'ALTIMETER_TEST_INCOMPLETE',
  severity: 'caution',
  meaning: 'The altimeter test lacks a part that flight under instrument rules requires',
  remedy: m.altimeterTestIncomplete_remedy,
  source: read('14 CFR 43 Appendix E (b)(1), 14 CFR 91.411(a)(1)'),
  check: ({ results }) => {
    const missing = (results.surveillance?.altimeterOmissions ?? []).map((omission) => omissionText(omission));
    if (missing.length === 0) return undefined;
    return {
      path: ['surveillance', 'altimeter'],
      sentence: said(m.altimeterTestIncomplete_altimeterTestNotRecord, { missing: list(missing, '; ') }),
      data: { missing: missing.length },
    };
  },
};
