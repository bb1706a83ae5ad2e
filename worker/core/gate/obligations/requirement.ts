import type { Evidence } from '../../record/not-required.ts';
import type { NotRequired } from '../../record/visit.ts';
import { instantOf } from '../../units/calendar.ts';
import type { WorkEvent } from './event.ts';
import { EVIDENCE_SHOWN, type Known, type Showing } from './evidence.ts';
import { statementsOn, type Unfit, unfitFor } from './not-required.ts';
import { isAbout, type Obligation } from './obligation.ts';
import { OBLIGATIONS } from './table.ts';

/** One thing that the work requires. */
export interface Requirement {
  evidence: Evidence;
  obligation: Obligation;
  event: WorkEvent;
  showing: Showing;
  /** Statements that it is not required. */
  statements: readonly { statement: NotRequired; unfit: Unfit | undefined }[];
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

/** Everything that the work of a visit requires, shown or not, in the order of the table. */
export function requirementsOf({ events, ...input }: Known & { events: readonly WorkEvent[] }): Requirement[] {
  return OBLIGATIONS.flatMap((obligation) =>
    events
      .filter((event) => isAbout(obligation, event))
      .flatMap((event) =>
        obligation.requires.map((evidence) => ({
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

/** Whether something required is shown, or validly stated as not required. */
export function isAnswered({ showing, statements }: Requirement): boolean {
  return showing.isShown || statements.some(({ unfit }) => unfit === undefined);
}

/** What is required and not answered: once for each item, or once for the aircraft, by the latest event. */
export function unanswered(all: readonly Requirement[], evidence: Evidence): Requirement[] {
  const open = all.filter((requirement) => requirement.evidence === evidence && !isAnswered(requirement));
  const byThing = new Map<string, Requirement>();
  for (const requirement of open) {
    const key = OF_THE_AIRCRAFT.has(evidence) ? '' : (requirement.event.item?.id ?? requirement.event.names.join());
    const known = byThing.get(key);
    if (!known || isLater(requirement, known)) byThing.set(key, requirement);
  }
  return [...byThing.values()];
}

function isLater({ event: { at } }: Requirement, { event: { at: other } }: Requirement): boolean {
  return at !== undefined && (other === undefined || instantOf(at) > instantOf(other));
}
