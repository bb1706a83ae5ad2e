import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { owedAuthority } from '../../authority.ts';
import { fieldName } from '../../field-name.ts';
import { holderOf } from '../../held-authority.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const authorisationOutOfScope: Rule = {
  code: 'AUTHORISATION_OUT_OF_SCOPE',
  severity: 'blocks',
  meaning: 'A person signed for something outside the scope of the authorisation',
  remedy: m.authorisationOutOfScope_remedy,
  source: read('14 CFR 65.109; ML.A.801'),
  check: ({ visit, people, at }) =>
    hits(people, (place) => {
      const scope = owedAuthority(place, at)?.scope;
      const person = scope && visit.people.find(({ id }) => id === place.value);
      if (!person || holderOf(visit, person, scope)) return undefined;
      const covers = person.scope.length > 0 ? list(person.scope.map((held) => termOf(held))) : said(m.nothing);
      return {
        path: place.path,
        sentence: said(m.authorisationOutOfScope_takesScopeAuthorisationCovers, {
          person: person.name,
          doing: fieldName(place.means.doing, place),
          scope: termOf(scope),
          covers,
        }),
        data: { person: person.id, scope },
      };
    }),
};
