import { phrase } from '../../words/words.ts';
import { identifiedLists } from '../identified.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const duplicateId: Rule = {
  code: 'DUPLICATE_ID',
  severity: 'blocks',
  meaning: 'Two entries of one list have the same identifier',
  remedy: phrase`Give each its own identifier`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    identifiedLists(visit).flatMap(({ what, path, key, ids }) =>
      ids.flatMap((id, index): Hit[] =>
        ids.indexOf(id) === index
          ? []
          : [
              {
                path: [...path, index, key],
                sentence: say.words`There is already a ${say.term(what)} “${id}”`,
                data: { id },
              },
            ],
      ),
    ),
};
