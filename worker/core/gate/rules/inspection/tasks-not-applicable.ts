import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Share of an inspection that may not apply to an aircraft, before somebody confirms it. Our own choice. */
const USUAL_SHARE = 0.2;

export const tasksNotApplicable: Rule = {
  code: 'TASKS_NOT_APPLICABLE',
  severity: 'caution',
  meaning: 'Many tasks of an inspection are marked as not applicable',
  remedy: m.tasksNotApplicable_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const tasks = visit.inspection?.tasks ?? [];
    const left = tasks.filter(({ result }) => result === 'not-applicable').length;
    if (left <= USUAL_SHARE * tasks.length) return undefined;
    return {
      path: ['inspection', 'tasks'],
      sentence: said(m.tasksNotApplicable_of, { left, all: tasks.length }),
      data: { left, all: tasks.length },
    };
  },
};
