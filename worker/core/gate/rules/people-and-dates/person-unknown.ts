import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fieldName } from '../../field-name.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const personUnknown: Rule = {
  code: 'PERSON_UNKNOWN',
  severity: 'blocks',
  meaning: 'The record names a person who is not among its people',
  remedy: m.personUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, people }) => {
    const known = new Set(visit.people.map(({ id }) => id));
    return people
      .filter(({ value }) => !known.has(value))
      .map((place) => ({
        path: place.path,
        sentence: said(m.personUnknown_whoNotAmongPeople, {
          place: place.value,
          doing: fieldName(place.means.doing, place),
        }),
        data: { person: place.value },
      }));
  },
};
