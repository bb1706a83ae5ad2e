import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedUnmatched: Rule = {
  code: 'CARRIED_UNMATCHED',
  severity: 'caution',
  meaning: 'The record answers an item that no earlier pack left open, or answers it twice',
  remedy: m.carriedUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, results, facts }) =>
    // Without an archive the open items are unknown.
    (facts.open === undefined ? [] : results.open.unmatched).map((index) => {
      const item = visit.carried?.[index]?.item ?? '';
      return {
        path: ['carried', index, 'item'],
        sentence: said(m.carriedUnmatched_notStandOpenAnswered, { item }),
        data: { item },
      };
    }),
};
