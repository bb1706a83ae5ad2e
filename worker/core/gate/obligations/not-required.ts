import type { Evidence, NotRequiredReason } from '../../record/not-required.ts';
import type { NotRequired, Visit } from '../../record/visit.ts';
import { dateOf } from '../../units/calendar.ts';
import type { WorkEvent } from './event.ts';
import type { Declarer, Obligation } from './obligation.ts';

/** Why a statement that something is not required does not count. */
export type Unfit = 'nobody-may' | 'reason' | 'person' | 'second-person' | 'limitation';

/** Finds the statements of a record about a piece of evidence and an event. */
export function statementsOn(visit: Visit, evidence: Evidence, event: WorkEvent): NotRequired[] {
  return (visit.notRequired ?? []).filter(
    (each) => each.evidence === evidence && (each.of === undefined || event.names.includes(each.of)),
  );
}

/** Tells why a statement does not count for a line of the table; undefined if it counts. */
export function unfitFor(
  statement: NotRequired,
  { notRequiredBy, reasons }: Pick<Obligation, 'notRequiredBy' | 'reasons'>,
  event: WorkEvent,
  { visit }: { visit: Visit },
): Unfit | undefined {
  if (notRequiredBy === 'nobody') return 'nobody-may';
  if (!(reasons as readonly NotRequiredReason[]).includes(statement.reason)) return 'reason';
  if (statement.reason === 'excluded-by-limitation' && !visit.release?.limitations?.length) return 'limitation';
  if (!mayState(statement, notRequiredBy, event, visit)) return 'person';
  if (notRequiredBy !== 'two-people') return undefined;
  const { secondBy } = statement;
  return secondBy !== undefined && secondBy !== statement.by && hasScope(visit, secondBy, statement.at)
    ? undefined
    : 'second-person';
}

function mayState({ by, at }: NotRequired, declarer: Declarer, event: WorkEvent, visit: Visit): boolean {
  if (hasScope(visit, by, at, 'release')) return true;
  if (declarer === 'doer') return hasScope(visit, by, at);
  if (declarer === 'another') return hasScope(visit, by, at) && !event.by.includes(by);
  return false;
}

/** Whether a person has an authorisation that is valid on the day of a statement; of a scope, if one is given. */
function hasScope({ people }: Visit, id: string, at: string, scope?: 'release'): boolean {
  const person = people.find((each) => each.id === id);
  if (!person || person.scope.length === 0) return false;
  if (person.validUntil !== undefined && person.validUntil < dateOf(at)) return false;
  return scope === undefined || person.scope.includes(scope);
}
