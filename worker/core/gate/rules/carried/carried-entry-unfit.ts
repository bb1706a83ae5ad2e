import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedEntryUnfit: Rule = {
  code: 'CARRIED_ENTRY_UNFIT',
  severity: 'blocks',
  meaning:
    'An open item is extended by an entry of another kind or without its limit, or superseded by one that binds less, has no limit or is the item itself',
  remedy: m.carriedEntryUnfit_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    results.open.unfit.map((index) => {
      const { item = '', evidence = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index, 'evidence'],
        sentence: said(m.carriedEntryUnfit_cannotGoAnotherKind, { item, evidence }),
        data: { item },
      };
    }),
};
