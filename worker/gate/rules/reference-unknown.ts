import { ENTRIES } from '../../visit/meaning.ts';
import { fieldsOf } from '../../visit/visit-fields.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const referenceUnknown: Rule = {
  code: 'REFERENCE_UNKNOWN',
  severity: 'blocks',
  meaning: 'One part of the record names something that another part does not have',
  remedy: phrase`Correct the name, or add what it names`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const known = new Set(
      fieldsOf(visit, 'identifier').flatMap(({ value, means }) => means.of.map((kind) => `${kind} ${value}`)),
    );
    return fieldsOf(visit, 'reference')
      .filter(({ means }) => means.code === undefined && (!means.unlessAbsent || means.unlessAbsent in visit))
      .filter(({ value, means }) => !means.to.some((kind) => known.has(`${kind} ${value}`)))
      .map(({ value, path, means }) => ({
        path,
        sentence: say.words`The record has no ${say.term(means.called ?? ENTRIES[means.to[0]])} “${value}”`,
        data: { id: value },
      }));
  },
};
