import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const inspectionTaskFailedUnresolved: Rule = {
  code: 'INSPECTION_TASK_FAILED_UNRESOLVED',
  severity: 'blocks',
  meaning: 'A task failed and no settled finding answers for it',
  remedy: m.inspectionTaskFailedUnresolved_remedy,
  source: read('14 CFR 43.11 (list of discrepancies)'),
  check: ({ visit }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, text, result, finding: answer }, index): Hit[] => {
      if (result !== 'failed') return [];
      const finding = visit.findings?.find((known) => known.id === answer);
      if (finding?.disposition === 'rectified' || finding?.disposition === 'deferred') return [];
      return [
        {
          path: ['inspection', 'tasks', index],
          sentence: said(m.inspectionTaskFailedUnresolved_taskFailedNoRectified, { id, text }),
          data: { task: id },
        },
      ];
    }),
};
