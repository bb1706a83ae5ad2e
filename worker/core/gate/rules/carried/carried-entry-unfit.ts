import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedEntryUnfit: Rule = {
  code: 'CARRIED_ENTRY_UNFIT',
  severity: 'blocks',
  meaning: 'The entry that extends or supersedes an open item is of another kind, binds less or has no limit',
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
