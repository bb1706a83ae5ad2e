import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedContradicted: Rule = {
  code: 'CARRIED_CONTRADICTED',
  severity: 'blocks',
  meaning: 'An open item is marked as closed, but the record leaves it open',
  remedy: m.carriedContradicted_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    results.open.contradicted.map((index) => {
      const { item = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index, 'answer'],
        sentence: said(m.carriedContradicted_saidClosedRecordStill, { item }),
        data: { item },
      };
    }),
};
