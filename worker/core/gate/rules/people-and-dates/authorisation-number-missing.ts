import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { owedAuthority } from '../../authority.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const authorisationNumberMissing: Rule = {
  code: 'AUTHORISATION_NUMBER_MISSING',
  severity: 'caution',
  meaning: 'A person signed for work that needs an authorisation, but has no licence or authorisation number',
  remedy: m.authorisationNumberMissing_remedy,
  source: memory('14 CFR 43.9(a)(4); ML.A.801'),
  check: ({ visit, people, at }) => {
    const signed = new Set(people.filter((place) => owedAuthority(place, at)).map(({ value }) => value));
    return hitsIn(['people'], visit.people, ({ id, name, authorisation, supervisor }) =>
      authorisation !== undefined || supervisor !== undefined || !signed.has(id) || id === visit.release?.by
        ? undefined
        : { field: 'authorisation', sentence: said(m.authorisationNumberMissing_none, { name }), data: { person: id } },
    );
  },
};
