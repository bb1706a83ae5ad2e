import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const authorisationUnstated: Rule = {
  code: 'AUTHORISATION_UNSTATED',
  severity: 'blocks',
  meaning: 'The person who releases has no licence or authorisation number',
  remedy: m.authorisationUnstated_remedy,
  source: read('14 CFR 43.9(a)(4); UK ANO 2016 art. 47'),
  check: ({ visit }) => {
    const index = visit.people.findIndex(({ id }) => id === visit.release?.by);
    const person = visit.people[index];
    if (!person || person.authorisation) return undefined;
    return {
      path: ['people', index, 'authorisation'],
      sentence: said(m.authorisationUnstated_releasesAircraftWithoutLicence, { person: person.name }),
      data: { person: person.id },
    };
  },
};
