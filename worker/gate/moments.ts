import type { Printer } from '../text/print.ts';
import type { Visit } from '../visit/visit.ts';

/** A moment that the record states, and where. */
export interface StatedMoment {
  what: string;
  at: string;
  path: readonly (string | number)[];
}

/** Every moment of work in the record, in the order in which the parts stand; the planned departure is not among them. */
export function statedMoments(visit: Visit, say: Printer): StatedMoment[] {
  const found: StatedMoment[] = [];
  const add = (what: string, at: string | undefined, ...path: (string | number)[]): void => {
    if (at !== undefined) found.push({ what, at, path });
  };
  add(say.words`arrival`, visit.visit.arrivedAt, 'visit', 'arrivedAt');
  for (const [i, finding] of (visit.findings ?? []).entries()) {
    add(say.words`finding ${finding.id}`, finding.foundAt, 'findings', i, 'foundAt');
    add(say.words`closing of finding ${finding.id}`, finding.closedAt, 'findings', i, 'closedAt');
  }
  for (const [i, { item, at }] of (visit.carried ?? []).entries())
    add(say.words`answer for ${item}`, at, 'carried', i, 'at');
  for (const [i, modification] of (visit.modifications ?? []).entries()) {
    add(say.words`end of modification ${modification.id}`, modification.finishedAt, 'modifications', i, 'finishedAt');
    add(
      say.words`inspection of modification ${modification.id}`,
      modification.inspectedAt,
      'modifications',
      i,
      'inspectedAt',
    );
    for (const [j, test] of (modification.tests ?? []).entries()) {
      add(say.words`test of modification ${modification.id}`, test.doneAt, 'modifications', i, 'tests', j, 'doneAt');
    }
  }
  for (const [i, task] of (visit.inspection?.tasks ?? []).entries()) {
    add(say.words`task ${task.id}`, task.at, 'inspection', 'tasks', i, 'at');
    add(
      say.words`second inspection of task ${task.id}`,
      task.secondInspection?.at,
      'inspection',
      'tasks',
      i,
      'secondInspection',
      'at',
    );
  }
  add(say.words`test of the wiring`, visit.wiring?.test?.at, 'wiring', 'test', 'at');
  add(say.words`transponder test`, visit.surveillance?.transponderTest?.at, 'surveillance', 'transponderTest', 'at');
  add(say.words`encoder comparison`, visit.surveillance?.encoder?.at, 'surveillance', 'encoder', 'at');
  add(say.words`altimeter test`, visit.surveillance?.altimeter?.at, 'surveillance', 'altimeter', 'at');
  add(say.words`test of the static system`, visit.surveillance?.staticSystem?.at, 'surveillance', 'staticSystem', 'at');
  add(say.words`compass swing`, visit.compass?.swungAt, 'compass', 'swungAt');
  for (const [i, run] of (visit.engineRuns ?? []).entries()) add(runText(run.when, say), run.at, 'engineRuns', i, 'at');
  for (const [i, check] of (visit.controls?.checks ?? []).entries())
    add(say.words`proof of ${say.term(check.axis)}`, check.at, 'controls', 'checks', i, 'at');
  add(say.words`weighing`, visit.weighing?.weighedAt, 'weighing', 'weighedAt');
  add(say.words`end of work`, visit.visit.workEndedAt, 'visit', 'workEndedAt');
  return found;
}

function runText(when: 'before' | 'after', say: Printer): string {
  return when === 'before' ? say.words`engine run before the work` : say.words`engine run after the work`;
}
