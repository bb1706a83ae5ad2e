import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, type Said, said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Coverage, isOnlyOf } from '../../regimes/regime.ts';
import { type Hit, type Rule, type RuleInput, read } from '../../rule.ts';
import { type Stated, statedIn } from '../../stated.ts';

export const statementUnfit: Rule = {
  code: 'STATEMENT_UNFIT',
  severity: 'blocks',
  meaning: 'The statements of the release do not cover what was done, or certify what was not done',
  remedy: m.statementUnfit_remedy,
  source: read('14 CFR 43.9(a), 43.9(c), 43.11(a)'),
  check: (input) => {
    const stated = statedIn(input.visit, input.regime);
    if (stated.length === 0) return undefined;
    return [...uncovered(input, stated), ...hits(stated, (each) => withoutObject(input.visit, each))];
  },
};

/** Work, or an inspection of the whole aircraft, that no statement covers. */
function uncovered({ visit, regime }: RuleInput, stated: readonly Stated[]): Hit[] {
  const path = ['release', 'statement'];
  const covers = (coverage: Coverage): boolean => stated.some(({ statement }) => statement.covers.includes(coverage));
  const work = covers('work') ? [] : workOf(visit, covers('inspection'));
  const { inspection } = visit;
  const isWhole = inspection !== undefined && inspection.extent !== 'part';
  const certifying = regime.statements.filter((statement) => statement.covers.includes('inspection'));
  return [
    ...(work.length === 0 ? [] : [{ path, sentence: said(m.statementUnfit_work, { what: list(work) }) }]),
    ...(!isWhole || covers('inspection')
      ? []
      : [
          {
            path,
            sentence: said(m.statementUnfit_inspection, {
              inspection: inspection.kind,
              statements: certifying.map(({ id }) => id).join(', '),
            }),
          },
        ]),
  ];
}

/** Names the work of a visit, with its tasks unless an inspection is certified. */
function workOf(visit: Visit, isInspectionCertified: boolean): Said[] {
  const tasks = isInspectionCertified ? 0 : (visit.inspection?.tasks.length ?? 0);
  const rectified = (visit.findings ?? []).filter(({ disposition }) => disposition === 'rectified').length;
  const counts = [
    [m.statementUnfit_modifications, visit.modifications?.length ?? 0],
    [m.statementUnfit_tasks, tasks],
    [m.statementUnfit_findings, rectified],
    [m.statementUnfit_parts, visit.parts?.length ?? 0],
  ] as const;
  return counts.filter(([, count]) => count > 0).map(([message, count]) => said(message, { count }));
}

/** A statement on an inspection or a weighing alone, of which the record has none. */
function withoutObject(visit: Visit, { statement, path }: Stated): Hit | undefined {
  const { id } = statement;
  if (isOnlyOf(statement, 'inspection') && !visit.inspection)
    return { path, sentence: said(m.statementUnfit_noInspection, { statement: id }), data: { statement: id } };
  if (isOnlyOf(statement, 'weighing') && !visit.weighing)
    return { path, sentence: said(m.statementUnfit_noWeighing, { statement: id }), data: { statement: id } };
  return undefined;
}
