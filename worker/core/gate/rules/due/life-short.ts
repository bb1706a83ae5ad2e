import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { comesSoon } from '../../comes-soon.ts';
import { dueFigures, pointOf } from '../../due-figures.ts';
import { hits } from '../../hits.ts';
import { lifePath } from '../../life-path.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lifeShort: Rule = {
  code: 'LIFE_SHORT',
  severity: 'caution',
  meaning: 'An item comes due within days, a few hours or a few landings',
  remedy: m.planNow,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(results.due, (due) => {
      const { id, item, isOverdue } = due;
      if (!comesSoon(due) || isOverdue) return undefined;
      const { figures, data } = dueFigures(pointOf(due));
      return {
        path: lifePath(visit, id),
        sentence: said(m.lifeShort_comesDueSoon, { id, item, figures }),
        data: { life: id, ...data },
      };
    }),
};
