import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { lifePath } from '../../life-path.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const lifeUnknown: Rule = {
  code: 'LIFE_UNKNOWN',
  severity: 'blocks',
  meaning: 'Nothing tells when something that binds was last done',
  remedy: m.lifeUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    results.due.flatMap(({ id, item, basis, dueDate, dueHours, dueLandings }): Hit[] => {
      const isKnown = dueDate !== undefined || dueHours !== undefined || dueLandings !== undefined;
      return isKnown || basis === 'owner' || basis === 'recommendation'
        ? []
        : [
            {
              path: lifePath(visit, id),
              sentence: said(m.lifeUnknown_nothingTellsWhenComes, { id, item }),
              data: { life: id },
            },
          ];
    }),
};
