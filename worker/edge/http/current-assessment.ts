import type { ArchiveFacts, Assessed, PackPlace } from '../../core/core.ts';
import type { KeptVisit, VisitAmongPacks } from '../archive/ledger/ledger-calls.ts';
import { orNotFound, orUnavailable } from './answer.ts';
import { archiveFacts } from './archive-facts.ts';
import { attachmentFacts } from './attached.ts';
import { ledgerOf, visitOf } from './params.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

// The ETag of a visit is the digest of its record and guards amendments. The ETag of its assessment also covers rule
// set and regime: it is what an inspector reads and releases. New rules therefore change only the second.

/** Kept visit with its current assessment. */
export interface CurrentAssessment {
  kept: KeptVisit;
  assessed: Assessed;
  /** Place of its next pack. */
  place: PackPlace;
  at: string;
}

/**
 * Reads the visit in the path and assesses it, with the facts of its files.
 *
 * @throws HttpProblem 404 if the caller's workshop has no such visit
 */
export async function currentAssessment(call: Call): Promise<CurrentAssessment> {
  const name = ledgerOf(call);
  const visit = visitOf(call);
  const ask = call.world.archive.ledger(name, (ledger) => ledger.visitAmongPacks(name.registration, visit));
  return assessedAmong(call, orUnavailable(await ask));
}

/** Assesses the visit in the path as of now, which may be later than the time of the request. */
export async function assessedAmong(call: Call, among: VisitAmongPacks): Promise<CurrentAssessment> {
  const at = call.world.now().toISOString();
  const kept = orNotFound(among.kept, 'such visit of this aircraft');
  const record: unknown = JSON.parse(kept.record);
  const assessed = await assessedOr422(call, record, at, await archiveFacts(call, ledgerOf(call), among, record));
  return { kept, assessed, place: among.place, at };
}

/**
 * Assesses a record.
 *
 * @throws HttpProblem 422 with every issue, if the value is not a record
 */
export async function assessedOr422(call: Call, value: unknown, at: string, facts: ArchiveFacts): Promise<Assessed> {
  const attachments = await attachmentFacts(call, value);
  const outcome = await call.pipeline.assess(value, at, { ...facts, attachments });
  if (outcome.ok) return outcome.assessed;
  const { issues } = outcome;
  const count = issues.length === 1 ? 'There is one defect' : `There are ${issues.length} defects`;
  throw new HttpProblem('record-not-valid', `${count}; nothing was kept`, { findings: issues });
}
