import type { Task, VisitFinding } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { leftAs } from '../../left-as.ts';
import { type Rule, read } from '../../rule.ts';

export const taskAgainstFinding: Rule = {
  code: 'TASK_AGAINST_FINDING',
  severity: 'blocks',
  meaning: 'The result of a task contradicts its finding, or a task is rectified without a finding',
  remedy: m.taskAgainstFinding_remedy,
  source: read('14 CFR 43.11 (list of discrepancies)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, (task) => {
      const finding = visit.findings?.find(({ id }) => id === task.finding);
      const sentence = contradiction(task, finding);
      return sentence && { field: 'result', sentence, data: { task: task.id, result: task.result } };
    }),
};

function contradiction({ id, result, finding: named }: Task, finding: VisitFinding | undefined): Said | undefined {
  if (result === 'rectified') {
    if (named === undefined) return said(m.taskAgainstFinding_rectifiedWithoutFinding, { id });
    const { disposition = 'open' } = finding ?? {};
    return !finding || disposition === 'rectified'
      ? undefined
      : said(m.taskAgainstFinding_rectifiedButFinding, {
          id,
          finding: finding.id,
          disposition: leftAs(disposition),
        });
  }
  const isSerious = finding?.severity === 'airworthiness' || finding?.severity === 'limit';
  if (result !== 'satisfactory' || !finding || !isSerious) return undefined;
  return said(m.taskAgainstFinding_satisfactoryButFinding, { id, finding: finding.id, text: finding.text });
}
