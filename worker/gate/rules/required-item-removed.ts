import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const requiredItemRemoved: Rule = {
  code: 'REQUIRED_ITEM_REMOVED',
  severity: 'blocks',
  meaning: 'An item that the aircraft may not fly without is gone and nothing replaces it',
  remedy: phrase`Fit a replacement, or defer it by an allowed route and say so in the limitations`,
  source: read('14 CFR 43.11 (placard); ML.A.403'),
  check: ({ results, say }) => {
    const gone = new Set(results.change.after.map(({ id }) => id));
    return results.change.changes.flatMap(({ change, listed, path }): Hit[] => {
      if (change.kind !== 'removed' || !listed?.required || gone.has(listed.id)) return [];
      return [
        {
          path,
          sentence: say.words`Item ${listed.id}, ${listed.name}, is required and was taken out without a replacement`,
          data: { item: listed.id },
        },
      ];
    });
  },
};
