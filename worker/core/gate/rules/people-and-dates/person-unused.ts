import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const personUnused: Rule = {
  code: 'PERSON_UNUSED',
  severity: 'note',
  meaning: 'A person in the list is not named anywhere else',
  remedy: m.personUnused_remedy,
  source: PRACTICE,
  check: ({ visit, people }) => {
    const used = new Set(people.map(({ value }) => value));
    return hitsIn(['people'], visit.people, ({ id, name }) => {
      if (used.has(id)) return undefined;
      return {
        sentence: said(m.personUnused_namedNowhereElseRecord, { name }),
        data: { person: id },
      };
    });
  },
};
