import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const personUnused: Rule = {
  code: 'PERSON_UNUSED',
  severity: 'note',
  meaning: 'Somebody among the people is named nowhere else',
  remedy: phrase`Nothing, or take the person out`,
  source: PRACTICE,
  check: ({ visit, people, say }) => {
    const used = new Set(people.map(({ value }) => value));
    return visit.people.flatMap(({ id, name }, index): Hit[] =>
      used.has(id)
        ? []
        : [
            {
              path: ['people', index],
              sentence: say.words`${name} is named nowhere else in the record`,
              data: { person: id },
            },
          ],
    );
  },
};
