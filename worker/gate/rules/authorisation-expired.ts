import { printDate } from '../../units/calendar.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const authorisationExpired: Rule = {
  code: 'AUTHORISATION_EXPIRED',
  severity: 'blocks',
  meaning: 'An authorisation had run out, or was not stated, on the day it was used',
  remedy: 'Have a person sign whose authorisation held on that day',
  source: read('14 CFR 43.9 and 43.11 (certificate of the signatory); ML.A.801'),
  check: ({ visit, people }) =>
    people.flatMap(({ person: id, path, doing, scope, on }): Hit[] => {
      const person = visit.people.find((known) => known.id === id);
      if (!person || !scope || !on) return [];
      const until = person.validUntil;
      if (until === undefined && scope !== 'release') return [];
      if (until !== undefined && until >= on) return [];
      const state = until === undefined ? 'has no stated validity' : `held until ${printDate(until)}`;
      return [
        {
          path,
          sentence: `${person.name} ${doing} on ${printDate(on)}; the authorisation ${state}`,
          data: { person: id, on, until: until ?? '' },
        },
      ];
    }),
};
