import { phrase } from '../../words/words.ts';
import { owedAuthority } from '../authority.ts';
import { fieldName } from '../field-name.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const authorisationExpired: Rule = {
  code: 'AUTHORISATION_EXPIRED',
  severity: 'blocks',
  meaning: 'An authorisation had run out, or was not stated, on the day it was used',
  remedy: phrase`Have a person sign whose authorisation held on that day`,
  source: read('14 CFR 43.9 and 43.11 (certificate of the signatory); ML.A.801'),
  check: ({ visit, people, at, say }) =>
    people.flatMap((place): Hit[] => {
      const owed = owedAuthority(place, at);
      const person = owed && visit.people.find(({ id }) => id === place.value);
      if (!person || owed.on === undefined) return [];
      const { scope, on } = owed;
      const until = person.validUntil;
      if (until === undefined && scope !== 'release') return [];
      if (until !== undefined && until >= on) return [];
      const state = until === undefined ? say.words`has no stated validity` : say.words`held until ${say.date(until)}`;
      return [
        {
          path: place.path,
          sentence: say.words`${person.name} ${fieldName(place.means.doing, place, say)} on ${say.date(on)}; the authorisation ${state}`,
          data: { person: person.id, on, until: until ?? '' },
        },
      ];
    }),
};
