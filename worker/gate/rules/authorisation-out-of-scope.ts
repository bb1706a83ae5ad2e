import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const authorisationOutOfScope: Rule = {
  code: 'AUTHORISATION_OUT_OF_SCOPE',
  severity: 'blocks',
  meaning: 'A person signed for something that their authorisation does not cover',
  remedy: phrase`Have a person with that scope sign, or correct the scope in people`,
  source: read('14 CFR 65.109; ML.A.801'),
  check: ({ visit, people, say }) =>
    people.flatMap(({ person: id, path, doing, scope }): Hit[] => {
      const person = visit.people.find((known) => known.id === id);
      if (!person || !scope || person.scope.includes(scope)) return [];
      const covers = person.scope.map((held) => say.term(held)).join(', ') || say.words`nothing`;
      return [
        {
          path,
          sentence: say.words`${person.name} ${doing}, which takes the scope ${say.term(scope)}; the authorisation covers ${covers}`,
          data: { person: id, scope },
        },
      ];
    }),
};
