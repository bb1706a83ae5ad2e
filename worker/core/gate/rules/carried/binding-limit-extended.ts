import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bindingLimitExtended: Rule = {
  code: 'BINDING_LIMIT_EXTENDED',
  severity: 'caution',
  meaning: 'A limit set by the authority or the manufacturer is extended',
  remedy: m.bindingLimitExtended_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    results.open.bindingExtended.map((index) => {
      const { item = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index],
        sentence: said(m.bindingLimitExtended_limitAuthorityMakerGiven, { item }),
        data: { item },
      };
    }),
};
