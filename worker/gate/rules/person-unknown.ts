import { phrase } from '../../words/words.ts';
import { fieldName } from '../field-name.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const personUnknown: Rule = {
  code: 'PERSON_UNKNOWN',
  severity: 'blocks',
  meaning: 'The record names a person who is not among its people',
  remedy: phrase`Add the person to people, or correct the name`,
  source: PRACTICE,
  check: ({ visit, people, say }) => {
    const known = new Set(visit.people.map(({ id }) => id));
    return people
      .filter(({ value }) => !known.has(value))
      .map((place) => ({
        path: place.path,
        sentence: say.words`“${place.value}”, who ${fieldName(place.means.doing, place, say)}, is not among the people of the record`,
        data: { person: place.value },
      }));
  },
};
