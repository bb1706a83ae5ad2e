import type { Place } from '../../../record/record-index.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { owedAuthority } from '../../authority.ts';
import { fieldName } from '../../field-name.ts';
import { holderOf } from '../../held-authority.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const authorisationExpired: Rule = {
  code: 'AUTHORISATION_EXPIRED',
  severity: 'blocks',
  meaning: 'An authorisation had expired, or had no stated validity, on the day of use',
  remedy: m.authorisationExpired_remedy,
  source: read('14 CFR 43.9 and 43.11 (certificate of the signatory); ML.A.801'),
  check: ({ visit, people, at }) =>
    hits(people, (place) => {
      const required = owedAuthority(place, at) ?? signedOn(place, at);
      const doing = required && visit.people.find(({ id }) => id === place.value);
      if (!doing || required.on === undefined) return undefined;
      const { scope, on } = required;
      const person = (scope && holderOf(visit, doing, scope)) ?? doing;
      const until = person.validUntil;
      if (until === undefined && scope !== 'release') return undefined;
      if (until !== undefined && until >= on) return undefined;
      const state =
        until === undefined
          ? said(m.authorisationExpired_noStatedValidity)
          : said(m.authorisationExpired_heldUntil, { until: figure.date(until) });
      return {
        path: place.path,
        sentence: said(m.authorisationExpired_authorisation, {
          person: person.name,
          doing: fieldName(place.means.doing, place),
          on: figure.date(on),
          state,
        }),
        data: { person: person.id, on, until: until ?? '' },
      };
    }),
};

/** Times in a part of the record at which its people signed. */
const SIGNED = ['at', 'doneAt', 'foundAt', 'finishedAt', 'closedAt', 'inspectedAt'];

/** Day of a signature that needs no scope: a validity that is stated holds for it too. */
function signedOn({ around }: Place<'person'>, at: string): { scope: undefined; on: string } | undefined {
  const part = around.at(-1)?.value ?? {};
  const days = SIGNED.flatMap((field) => (typeof part[field] === 'string' ? [dateOf(part[field])] : []));
  const first = days.toSorted()[0];
  return first === undefined || first > dateOf(at) ? undefined : { scope: undefined, on: first };
}
