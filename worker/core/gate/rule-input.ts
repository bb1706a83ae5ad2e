import type { Results } from '../calc/results.ts';
import type { EarlierIssue } from '../record/earlier-issue.ts';
import type { Restated } from '../record/restated.ts';
import type { Visit } from '../record/visit.ts';
import { fieldsOf } from '../record/visit-fields.ts';
import { eventsOf } from './obligations/event.ts';
import { requirementsOf } from './obligations/requirement.ts';
import type { Regime } from './regimes/regime.ts';
import type { ArchiveFacts, RuleInput } from './rule.ts';

export interface GateOptions {
  /** Time of the assessment. */
  at: string;
  facts: ArchiveFacts;
  /** Issue that the record replaces. */
  earlierIssue?: EarlierIssue | undefined;
  /** Parts of its standing file, or of the newest if it names none, that the record states otherwise. */
  restated?: readonly Restated[] | undefined;
}

/** Collects the input of the rules; cautions are added later. */
export function ruleInput(
  visit: Visit,
  results: Results,
  regime: Regime,
  { at, facts, earlierIssue, restated = [] }: GateOptions,
): RuleInput {
  const aircraftBefore = facts.standing?.sections.aircraft as Partial<Visit['aircraft']> | undefined;
  const events = eventsOf({ visit, results, aircraftBefore });
  return {
    visit,
    results,
    regime,
    at,
    facts,
    earlierIssue,
    restated,
    events,
    requirements: requirementsOf({ visit, results, events }),
    cautionCodes: new Set(),
    cautionFigures: new Map(),
    people: fieldsOf(visit, 'person'),
    timestamps: fieldsOf(visit, 'timestamp'),
  };
}
