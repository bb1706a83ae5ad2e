import { phrase } from '../../words/words.ts';
import { owedAuthority } from '../authority.ts';
import { fieldName } from '../field-name.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const authorisationOutOfScope: Rule = {
  code: 'AUTHORISATION_OUT_OF_SCOPE',
  severity: 'blocks',
  meaning: 'A person signed for something that their authorisation does not cover',
  remedy: phrase`Have a person with that scope sign, or correct the scope in people`,
  source: read('14 CFR 65.109; ML.A.801'),
  check: ({ visit, people, at, say }) =>
    people.flatMap((place): Hit[] => {
      const scope = owedAuthority(place, at)?.scope;
      const person = scope && visit.people.find(({ id }) => id === place.value);
      if (!person || person.scope.includes(scope)) return [];
      const covers = person.scope.map((held) => say.term(held)).join(', ') || say.words`nothing`;
      return [
        {
          path: place.path,
          sentence: say.words`${person.name} ${fieldName(place.means.doing, place, say)}, which takes the scope ${say.term(scope)}; the authorisation covers ${covers}`,
          data: { person: person.id, scope },
        },
      ];
    }),
};
