import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedUnmatched: Rule = {
  code: 'CARRIED_UNMATCHED',
  severity: 'caution',
  meaning: 'The record answers for something that no earlier pack of this workshop left open, or answers for it twice',
  remedy: m.carriedUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, results, facts }) =>
    // Without an archive nothing is known of what stands open.
    (facts.open === undefined ? [] : results.open.unmatched).map((index) => {
      const item = visit.carried?.[index]?.item ?? '';
      return {
        path: ['carried', index, 'item'],
        sentence: said(m.carriedUnmatched_notStandOpenAnswered, { item }),
        data: { item },
      };
    }),
};
