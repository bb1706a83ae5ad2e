import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const authorisationExpired: Rule = {
  code: 'AUTHORISATION_EXPIRED',
  severity: 'blocks',
  meaning: 'An authorisation had run out, or was not stated, on the day it was used',
  remedy: phrase`Have a person sign whose authorisation held on that day`,
  source: read('14 CFR 43.9 and 43.11 (certificate of the signatory); ML.A.801'),
  check: ({ visit, people, say }) =>
    people.flatMap(({ person: id, path, doing, scope, on }): Hit[] => {
      const person = visit.people.find((known) => known.id === id);
      if (!person || !scope || !on) return [];
      const until = person.validUntil;
      if (until === undefined && scope !== 'release') return [];
      if (until !== undefined && until >= on) return [];
      const state = until === undefined ? say.words`has no stated validity` : say.words`held until ${say.date(until)}`;
      return [
        {
          path,
          sentence: say.words`${person.name} ${doing} on ${say.date(on)}; the authorisation ${state}`,
          data: { person: id, on, until: until ?? '' },
        },
      ];
    }),
};
