import { references } from '../identified.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const referenceUnknown: Rule = {
  code: 'REFERENCE_UNKNOWN',
  severity: 'blocks',
  meaning: 'One part of the record names something that another part does not have',
  remedy: 'Correct the name, or add what it names',
  source: PRACTICE,
  check: ({ visit }) =>
    references(visit)
      .filter(({ id, known }) => !known.includes(id))
      .map(({ what, id, path }) => ({ path, sentence: `The record has no ${what} “${id}”`, data: { id } })),
};
