import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { lifePath } from '../../life-path.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lifeUnknown: Rule = {
  code: 'LIFE_UNKNOWN',
  severity: 'blocks',
  meaning: 'It is not recorded when a binding item was last done',
  remedy: m.lifeUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(results.due, ({ id, item, basis, dueDate, dueHours, dueLandings, dueCounts }) => {
      const isKnown = dueDate !== undefined || dueHours !== undefined || dueLandings !== undefined || dueCounts;
      if (isKnown || basis === 'owner' || basis === 'recommendation') return undefined;
      return {
        path: lifePath(visit, id),
        sentence: said(m.lifeUnknown_nothingTellsWhenComes, { id, item }),
        data: { life: id },
      };
    }),
};
