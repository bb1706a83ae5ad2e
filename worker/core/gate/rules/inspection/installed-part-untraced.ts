import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const installedPartUntraced: Rule = {
  code: 'INSTALLED_PART_UNTRACED',
  severity: 'caution',
  meaning: 'An installed item has no entry in the parts trace',
  remedy: m.installedPartUntraced_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, path }) => {
      if ((change.kind !== 'installed' && change.kind !== 'replaced') || change.part) return undefined;
      const item = change.kind === 'replaced' ? change.by : change;
      return {
        path: [...path, 'part'],
        sentence: said(m.installedPartUntraced_putWithoutEntryParts, { item: item.name }),
        data: { item: item.id },
      };
    }),
};
