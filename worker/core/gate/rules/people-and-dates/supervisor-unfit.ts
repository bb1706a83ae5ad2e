import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const supervisorUnfit: Rule = {
  code: 'SUPERVISOR_UNFIT',
  severity: 'blocks',
  meaning: 'A person under training has a supervisor who is the same person, or also under training',
  remedy: m.supervisorUnfit_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['people'], visit.people, ({ id, name, supervisor }) => {
      const named = visit.people.find((person) => person.id === supervisor);
      if (!named || (named.id !== id && named.supervisor === undefined)) return undefined;
      return {
        field: 'supervisor',
        sentence:
          named.id === id
            ? said(m.supervisorUnfit_ownSupervisor, { name })
            : said(m.supervisorUnfit_underTraining, { supervisor: named.name, name }),
        data: { person: id },
      };
    }),
};
