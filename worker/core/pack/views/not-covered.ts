import { isDriven } from '../../record/driven.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';

type Part = (context: PackContext) => boolean;

/** What a reader of a release may take for granted, and whether this record has it. */
const PARTS: readonly (readonly [name: Message, has: Part])[] = [
  [m.notCovered_inspection, ({ visit }) => visit.inspection !== undefined && visit.inspection.extent !== 'part'],
  [m.notCovered_bulletins, ({ visit }) => visit.bulletins?.searchedOn !== undefined],
  [m.notCovered_dueList, ({ visit, results }) => visit.lives !== undefined || results.open.before.length > 0],
  [m.notCovered_electrical, ({ visit }) => visit.electrical !== undefined],
  [m.notCovered_engineRun, ({ visit }) => !isDriven(visit.aircraft) || (visit.engineRuns ?? []).length > 0],
  [m.notCovered_controls, ({ visit }) => (visit.controls?.checks.length ?? 0) > 0],
  [m.notCovered_compass, ({ visit }) => visit.compass !== undefined],
  [m.notCovered_weighing, ({ visit }) => visit.weighing !== undefined],
];

/** Names of what this visit did not do, in one line; empty if it did all. */
export function notCovered(context: PackContext): string {
  return PARTS.filter(([, has]) => !has(context))
    .map(([name]) => context.fmt.text(name))
    .join('; ');
}
