import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const inspectionTaskFailedUnresolved: Rule = {
  code: 'INSPECTION_TASK_FAILED_UNRESOLVED',
  severity: 'blocks',
  meaning: 'A task failed, and no rectified or deferred finding covers it',
  remedy: m.inspectionTaskFailedUnresolved_remedy,
  source: read('14 CFR 43.11 (list of discrepancies)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, ({ id, text, result, finding: answer }) => {
      if (result !== 'failed') return undefined;
      const finding = visit.findings?.find((known) => known.id === answer);
      if (finding?.disposition === 'rectified' || finding?.disposition === 'deferred') return undefined;
      return {
        sentence: said(m.inspectionTaskFailedUnresolved_taskFailedNoRectified, { id, text }),
        data: { task: id },
      };
    }),
};
