import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const personUnused: Rule = {
  code: 'PERSON_UNUSED',
  severity: 'note',
  meaning: 'Somebody among the people is named nowhere else',
  remedy: m.personUnused_remedy,
  source: PRACTICE,
  check: ({ visit, people }) => {
    const used = new Set(people.map(({ value }) => value));
    return visit.people.flatMap(({ id, name }, index): Hit[] =>
      used.has(id)
        ? []
        : [
            {
              path: ['people', index],
              sentence: said(m.personUnused_namedNowhereElseRecord, { name }),
              data: { person: id },
            },
          ],
    );
  },
};
