import type { Evidence } from '../../record/not-owed.ts';
import type { NotOwed } from '../../record/visit.ts';
import { instantOf } from '../../units/calendar.ts';
import type { WorkEvent } from './event.ts';
import { EVIDENCE_SHOWN, type Known, type Showing } from './evidence.ts';
import { statementsOn, type Unfit, unfitFor } from './not-owed.ts';
import { isAbout, type Obligation } from './obligation.ts';
import { OBLIGATIONS } from './table.ts';

/** One thing that the work owes. */
export interface Owed {
  evidence: Evidence;
  obligation: Obligation;
  event: WorkEvent;
  showing: Showing;
  /** Statements that it is not owed. */
  statements: readonly { statement: NotOwed; unfit: Unfit | undefined }[];
}

/** Evidence that is shown once for the whole aircraft, not for each item. */
const OF_THE_AIRCRAFT: ReadonlySet<Evidence> = new Set<Evidence>([
  'transponder-test',
  'encoder-check',
  'altimeter-test',
  'static-test',
  'pitot-test',
  'interference-check',
  'continuity-test',
  'compass-swing',
  'engine-run',
  'leak-check',
  'new-weighing',
  'bulletin-search',
  'due-list',
  'programme',
  'closing-check',
]);

/** Everything that the work of a visit owes, shown or not, in the order of the table. */
export function owedBy({ events, ...input }: Known & { events: readonly WorkEvent[] }): Owed[] {
  return OBLIGATIONS.flatMap((obligation) =>
    events
      .filter((event) => isAbout(obligation, event))
      .flatMap((event) =>
        obligation.owes.map((evidence) => ({
          evidence,
          obligation,
          event,
          showing: EVIDENCE_SHOWN[evidence](input, event),
          statements: statementsOn(input.visit, evidence, event).map((statement) => ({
            statement,
            unfit: unfitFor(statement, obligation, event, input),
          })),
        })),
      ),
  );
}

/** Whether something owed is shown, or validly stated as not owed. */
export function isAnswered({ showing, statements }: Owed): boolean {
  return showing.isShown || statements.some(({ unfit }) => unfit === undefined);
}

/** What is owed and not answered: once for each item, or once for the aircraft, by the latest event. */
export function unanswered(all: readonly Owed[], evidence: Evidence): Owed[] {
  const open = all.filter((owed) => owed.evidence === evidence && !isAnswered(owed));
  const byThing = new Map<string, Owed>();
  for (const owed of open) {
    const key = OF_THE_AIRCRAFT.has(evidence) ? '' : (owed.event.item?.id ?? owed.event.names.join());
    const known = byThing.get(key);
    if (!known || isLater(owed, known)) byThing.set(key, owed);
  }
  return [...byThing.values()];
}

function isLater({ event: { at } }: Owed, { event: { at: other } }: Owed): boolean {
  return at !== undefined && (other === undefined || instantOf(at) > instantOf(other));
}
