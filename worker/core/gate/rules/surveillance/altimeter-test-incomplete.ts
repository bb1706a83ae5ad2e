import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { omissionText } from '../../omission-text.ts';
import { type Rule, read } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const altimeterTestIncomplete: Rule = {
  code: 'ALTIMETER_TEST_INCOMPLETE',
  severity: 'caution',
  meaning: 'The altimeter test lacks a part that flight under instrument rules requires',
  remedy: m.altimeterTestIncomplete_remedy,
  source: read('14 CFR 43 Appendix E (b)(1), 14 CFR 91.411(a)(1)'),
  check: ({ visit, results }) =>
    hits(results.surveillance?.altimeters, ({ omissions }, index) => {
      if (omissions.length === 0) return undefined;
      const missing = list(omissions.map(omissionText), '; ');
      return {
        path: ['surveillance', 'altimeters', index],
        sentence: said(m.altimeterTestIncomplete_altimeterTestNotRecord, {
          missing: ofTested(visit.surveillance?.altimeters?.[index], missing),
        }),
        data: { missing: omissions.length },
      };
    }),
};
