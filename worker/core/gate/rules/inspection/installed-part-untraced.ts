import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const installedPartUntraced: Rule = {
  code: 'INSTALLED_PART_UNTRACED',
  severity: 'caution',
  meaning: 'An item put in names no entry of the parts trace',
  remedy: m.installedPartUntraced_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.change.changes.flatMap(({ change, path }): Hit[] => {
      if ((change.kind !== 'installed' && change.kind !== 'replaced') || change.part) return [];
      const item = change.kind === 'replaced' ? change.by : change;
      return [
        {
          path: [...path, 'part'],
          sentence: said(m.installedPartUntraced_putWithoutEntryParts, { item: item.name }),
          data: { item: item.id },
        },
      ];
    }),
};
