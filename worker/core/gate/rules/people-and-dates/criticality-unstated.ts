import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

/** Tasks named in one sentence; more are counted. */
const NAMED = 6;

export const criticalityUnstated: Rule = {
  code: 'CRITICALITY_UNSTATED',
  severity: 'blocks',
  meaning: 'Tasks do not state whether they are critical and need a second inspection',
  remedy: m.criticalityUnstated_remedy,
  source: read('AMC1 CAO.A.060(h), AMC4 145.A.48(b): critical tasks are identified'),
  values: ['secondInspection'],
  check: ({ visit, regime }) => {
    if (!regime.secondInspection.value) return undefined;
    const tasks = visit.inspection?.tasks ?? [];
    const open = tasks.filter(({ critical, result }) => critical === undefined && result !== 'not-applicable');
    const first = open[0];
    if (!first) return undefined;
    const names = { tasks: list(open.slice(0, NAMED).map(({ id }) => id)) };
    return {
      path: ['inspection', 'tasks', tasks.indexOf(first), 'critical'],
      sentence:
        open.length > NAMED
          ? said(m.criticalityUnstated_tasksAndMore, { ...names, more: open.length - NAMED })
          : said(m.criticalityUnstated_tasks, names),
      data: { tasks: open.length },
    };
  },
};
