import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { lifePath } from '../../life-path.ts';
import { type Rule, read } from '../../rule.ts';

export const toleranceUsed: Rule = {
  code: 'TOLERANCE_USED',
  severity: 'caution',
  meaning: 'An item is overdue, within its tolerance',
  remedy: m.toleranceUsed_remedy,
  source: read('ML.A.302 (tolerance, next interval)'),
  check: ({ visit, results }) =>
    hits(results.due, ({ id, item, basis, isWithinTolerance }) =>
      isWithinTolerance && basis === 'programme'
        ? {
            path: lifePath(visit, id),
            sentence: said(m.toleranceUsed_overdueWithinTolerance, { id, item }),
            data: { life: id },
          }
        : undefined,
    ),
};
