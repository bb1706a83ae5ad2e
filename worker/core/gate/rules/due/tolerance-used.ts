import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { lifePath } from '../../life-path.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const toleranceUsed: Rule = {
  code: 'TOLERANCE_USED',
  severity: 'caution',
  meaning: 'Something is overdue within its tolerance',
  remedy: m.toleranceUsed_remedy,
  source: read('ML.A.302 (tolerance, next interval)'),
  check: ({ visit, results }) =>
    results.due.flatMap(({ id, item, basis, isWithinTolerance }): Hit[] =>
      isWithinTolerance && basis === 'programme'
        ? [
            {
              path: lifePath(visit, id),
              sentence: said(m.toleranceUsed_overdueWithinTolerance, { id, item }),
              data: { life: id },
            },
          ]
        : [],
    ),
};
