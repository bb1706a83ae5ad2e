import type { Visit } from '../visit/visit.ts';

/** A moment that the record states, and where. */
export interface StatedMoment {
  what: string;
  at: string;
  path: readonly (string | number)[];
}

/** Every moment of work in the record, in the order in which the parts stand; the planned departure is not among them. */
export function statedMoments(visit: Visit): StatedMoment[] {
  const found: StatedMoment[] = [];
  const add = (what: string, at: string | undefined, ...path: (string | number)[]): void => {
    if (at !== undefined) found.push({ what, at, path });
  };
  add('arrival', visit.visit.arrivedAt, 'visit', 'arrivedAt');
  for (const [i, finding] of (visit.findings ?? []).entries()) {
    add(`finding ${finding.id}`, finding.foundAt, 'findings', i, 'foundAt');
    add(`closing of finding ${finding.id}`, finding.closedAt, 'findings', i, 'closedAt');
  }
  for (const [i, modification] of (visit.modifications ?? []).entries()) {
    add(`end of modification ${modification.id}`, modification.finishedAt, 'modifications', i, 'finishedAt');
    add(`inspection of modification ${modification.id}`, modification.inspectedAt, 'modifications', i, 'inspectedAt');
    for (const [j, test] of (modification.tests ?? []).entries()) {
      add(`test of modification ${modification.id}`, test.doneAt, 'modifications', i, 'tests', j, 'doneAt');
    }
  }
  for (const [i, task] of (visit.inspection?.tasks ?? []).entries()) {
    add(`task ${task.id}`, task.at, 'inspection', 'tasks', i, 'at');
    add(
      `second inspection of task ${task.id}`,
      task.secondInspection?.at,
      'inspection',
      'tasks',
      i,
      'secondInspection',
      'at',
    );
  }
  add('test of the wiring', visit.wiring?.test?.at, 'wiring', 'test', 'at');
  add('transponder test', visit.surveillance?.transponderTest?.at, 'surveillance', 'transponderTest', 'at');
  add('encoder comparison', visit.surveillance?.encoder?.at, 'surveillance', 'encoder', 'at');
  add('altimeter test', visit.surveillance?.altimeter?.at, 'surveillance', 'altimeter', 'at');
  add('test of the static system', visit.surveillance?.staticSystem?.at, 'surveillance', 'staticSystem', 'at');
  add('compass swing', visit.compass?.swungAt, 'compass', 'swungAt');
  for (const [i, run] of (visit.engineRuns ?? []).entries())
    add(`engine run ${run.when} the work`, run.at, 'engineRuns', i, 'at');
  for (const [i, check] of (visit.controls?.checks ?? []).entries())
    add(`proof of ${check.axis}`, check.at, 'controls', 'checks', i, 'at');
  add('weighing', visit.weighing?.weighedAt, 'weighing', 'weighedAt');
  add('end of work', visit.visit.workEndedAt, 'visit', 'workEndedAt');
  return found;
}
