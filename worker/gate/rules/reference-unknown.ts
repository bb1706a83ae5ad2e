import { phrase } from '../../words/words.ts';
import { references } from '../identified.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const referenceUnknown: Rule = {
  code: 'REFERENCE_UNKNOWN',
  severity: 'blocks',
  meaning: 'One part of the record names something that another part does not have',
  remedy: phrase`Correct the name, or add what it names`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    references(visit)
      .filter(({ id, known }) => !known.includes(id))
      .map(({ what, id, path }) => ({
        path,
        sentence: say.words`The record has no ${say.term(what)} “${id}”`,
        data: { id },
      })),
};
