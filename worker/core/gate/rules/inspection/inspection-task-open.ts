import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const inspectionTaskOpen: Rule = {
  code: 'INSPECTION_TASK_OPEN',
  severity: 'blocks',
  meaning: 'An inspection task is open',
  remedy: m.inspectionTaskOpen_remedy,
  source: read('14 CFR 43.11; ML.A.302'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, ({ id, text, result }) =>
      result === 'open'
        ? {
            field: 'result',
            sentence: said(m.inspectionTaskOpen_taskOpen, { id, text }),
            data: { task: id },
          }
        : undefined,
    ),
};
