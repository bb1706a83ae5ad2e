import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const inspectionTaskOpen: Rule = {
  code: 'INSPECTION_TASK_OPEN',
  severity: 'blocks',
  meaning: 'A task of the inspection is open',
  remedy: m.inspectionTaskOpen_remedy,
  source: read('14 CFR 43.11; ML.A.302'),
  check: ({ visit }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, text, result }, index): Hit[] =>
      result === 'open'
        ? [
            {
              path: ['inspection', 'tasks', index, 'result'],
              sentence: said(m.inspectionTaskOpen_taskOpen, { id, text }),
              data: { task: id },
            },
          ]
        : [],
    ),
};
