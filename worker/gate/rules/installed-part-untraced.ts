import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const installedPartUntraced: Rule = {
  code: 'INSTALLED_PART_UNTRACED',
  severity: 'caution',
  meaning: 'An item put in names no entry of the parts trace',
  remedy: phrase`Name the part it came from`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ change, path }): Hit[] => {
      if ((change.kind !== 'installed' && change.kind !== 'replaced') || change.part) return [];
      const item = change.kind === 'replaced' ? change.by : change;
      return [
        {
          path: [...path, 'part'],
          sentence: say.words`${item.name} was put in without an entry in the parts trace`,
          data: { item: item.id },
        },
      ];
    }),
};
