import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { owedAuthority } from '../../authority.ts';
import { fieldName } from '../../field-name.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const authorisationExpired: Rule = {
  code: 'AUTHORISATION_EXPIRED',
  severity: 'blocks',
  meaning: 'An authorisation had run out, or was not stated, on the day it was used',
  remedy: m.authorisationExpired_remedy,
  source: read('14 CFR 43.9 and 43.11 (certificate of the signatory); ML.A.801'),
  check: ({ visit, people, at }) =>
    people.flatMap((place): Hit[] => {
      const owed = owedAuthority(place, at);
      const person = owed && visit.people.find(({ id }) => id === place.value);
      if (!person || owed.on === undefined) return [];
      const { scope, on } = owed;
      const until = person.validUntil;
      if (until === undefined && scope !== 'release') return [];
      if (until !== undefined && until >= on) return [];
      const state =
        until === undefined
          ? said(m.authorisationExpired_noStatedValidity)
          : said(m.authorisationExpired_heldUntil, { until: figure.date(until) });
      return [
        {
          path: place.path,
          sentence: said(m.authorisationExpired_authorisation, {
            person: person.name,
            doing: fieldName(place.means.doing, place),
            on: figure.date(on),
            state,
          }),
          data: { person: person.id, on, until: until ?? '' },
        },
      ];
    }),
};
