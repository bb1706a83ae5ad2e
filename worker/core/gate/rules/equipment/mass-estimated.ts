import { incomingItem } from '../../../calc/mass/equipment-steps.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const massEstimated: Rule = {
  code: 'MASS_ESTIMATED',
  severity: 'caution',
  meaning: 'The mass of an installed item is only estimated',
  remedy: m.massEstimated_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, path }) => {
      const item = incomingItem(change);
      if (item?.massSource !== 'estimated') return undefined;
      return { path, sentence: said(m.massEstimated_massOnlyEstimated, { item: item.name }), data: { item: item.id } };
    }),
};
