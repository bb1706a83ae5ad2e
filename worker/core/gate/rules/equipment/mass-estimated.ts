import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const massEstimated: Rule = {
  code: 'MASS_ESTIMATED',
  severity: 'caution',
  meaning: 'The mass of an item put in is only estimated',
  remedy: m.massEstimated_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.change.changes.flatMap(({ change, path }): Hit[] => {
      const item = change.kind === 'replaced' ? change.by : change.kind === 'installed' ? change : undefined;
      if (item?.massSource !== 'estimated') return [];
      return [
        { path, sentence: said(m.massEstimated_massOnlyEstimated, { item: item.name }), data: { item: item.id } },
      ];
    }),
};
