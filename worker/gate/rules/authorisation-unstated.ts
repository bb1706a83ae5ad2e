import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const authorisationUnstated: Rule = {
  code: 'AUTHORISATION_UNSTATED',
  severity: 'blocks',
  meaning: 'The person who releases has no licence or authorisation number',
  remedy: phrase`Give the number in people`,
  source: read('14 CFR 43.9(a)(4) as summarised; UK ANO 2016 art. 47'),
  check: ({ visit, say }) => {
    const index = visit.people.findIndex(({ id }) => id === visit.release?.by);
    const person = visit.people[index];
    if (!person || person.authorisation) return [];
    return [
      {
        path: ['people', index, 'authorisation'],
        sentence: say.words`${person.name} releases the aircraft without a licence or authorisation number`,
        data: { person: person.id },
      },
    ];
  },
};
