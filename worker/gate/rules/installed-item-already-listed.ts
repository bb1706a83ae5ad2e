import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const installedItemAlreadyListed: Rule = {
  code: 'INSTALLED_ITEM_ALREADY_LISTED',
  severity: 'blocks',
  meaning: 'An item was put in, or entered as found, under a line number that is taken',
  remedy: phrase`Give it a line number of its own`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { corrections, changes } = results.change;
    const entered = corrections.map(({ path, taken }) => ({ path, taken }));
    const put = changes.map(({ change, path, taken }) => ({
      path: change.kind === 'replaced' ? [...path, 'by'] : path,
      taken,
    }));
    return [...entered, ...put].flatMap(({ path, taken }): Hit[] =>
      taken === undefined
        ? []
        : [
            {
              path: [...path, 'id'],
              sentence: say.words`The equipment list already has an item ${taken}`,
              data: { item: taken },
            },
          ],
    );
  },
};
