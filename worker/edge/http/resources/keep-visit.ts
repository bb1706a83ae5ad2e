import type { Assessed } from '../../../core/core.ts';
import { upgrade, versionOf } from '../../../core/record/upgrades.ts';
import type { Expected, KeepOutcome, KeptVisit } from '../../archive/ledger/ledger-calls.ts';
import { json, orUnavailable } from '../answer.ts';
import { archiveFacts } from '../archive-facts.ts';
import { expectedOf } from '../conditions.ts';
import { assessedOr422 } from '../current-assessment.ts';
import { actorOf } from '../in-whose-name.ts';
import { noteAircraft, noteKept, requireNotLost } from '../known-aircraft.ts';
import { mergePatch } from '../merge-patch.ts';
import { ledgerOf, registrationOf, visitOf } from '../params.ts';
import { HttpProblem } from '../problem.ts';
import { readJson } from '../read-json.ts';
import type { Call, Operation } from '../route.ts';
import { KeptAnswer } from '../schemas.ts';
import { keptVisit, visitHeaders } from './visits.ts';

const CONDITIONS = {
  'If-Match': 'ETag of the visit as you read it; required to change an existing visit',
} as const;

const kept = (description: string) =>
  ({ description, content: { 'application/json': KeptAnswer }, headers: ['ETag'] }) as const;

const PROBLEMS = [
  'malformed-json',
  'precondition-failed',
  'precondition-required',
  'body-too-large',
  'unsupported-media-type',
  'record-not-valid',
] as const;

export const putVisit: Operation = {
  id: 'putVisit',
  summary: 'Keep a working record, or replace it',
  description:
    'A record that fits the schema is kept even if it cannot be released; the response lists the findings. The ETag of the response is that of the visit (recordSha256), not that of its assessment.',
  headers: { ...CONDITIONS, 'If-None-Match': '* keeps the record only if there is none yet' },
  body: { type: 'application/json', description: 'The whole record', schema: 'VisitRecord' },
  answers: { 200: kept('Replaced, or kept before in the same form'), 201: kept('Kept for the first time') },
  problems: PROBLEMS,
  async handle(call) {
    const expected = expectedOf(call.request);
    const { value, text } = await readJson(call.request);
    return keep(call, value, text, expected);
  },
};

export const patchVisit: Operation = {
  id: 'patchVisit',
  summary: 'Amend the working record',
  description:
    'JSON Merge Patch (RFC 7396): null removes a field, objects merge, lists are replaced whole. The fields have the names of the version that the patch states as schemaVersion: an older record is upgraded to it first. Without it, they have the names of the version of the record.',
  headers: CONDITIONS,
  body: { type: 'application/merge-patch+json', description: 'Changes', schema: 'VisitRecord' },
  answers: { 200: kept('Amended') },
  problems: PROBLEMS,
  async handle(call) {
    const expected = requireCondition(call);
    const { value } = await readJson(call.request, 'application/merge-patch+json');
    const before = await visitToChange(call, expected);
    const stored: unknown = JSON.parse(before.record);
    const version = versionOf(value);
    const merged = mergePatch(version === undefined ? stored : upgrade(stored, version), value);
    // The write requires the version that was merged into, even if the client required only that there is one.
    return keep(call, merged, JSON.stringify(merged), { kind: 'one-of', recordSha256: [before.recordSha256] });
  },
};

/**
 * Returns the condition of a change of an existing visit.
 *
 * @throws HttpProblem 428 without one
 */
export function requireCondition({ request }: Call): Expected {
  const expected = expectedOf(request);
  if (expected.kind === 'unstated' || expected.kind === 'absent') throw conditionRequired();
  return expected;
}

/**
 * Returns the kept visit in the path, to be changed.
 *
 * @throws HttpProblem 412 if it changed since it was read
 */
export async function visitToChange(call: Call, expected: Expected): Promise<KeptVisit> {
  const before = await keptVisit(call);
  if (expected.kind === 'one-of' && !expected.recordSha256.includes(before.recordSha256)) throw moved();
  return before;
}

/** Assesses and keeps a record of the visit in the path. */
export async function keep(call: Call, value: unknown, record: string, expected: Expected): Promise<Response> {
  const ledger = ledgerOf(call);
  const visit = visitOf(call);
  const at = call.world.now().toISOString();
  const around = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.packsAround(visit)));
  const assessed = await assessedOr422(call, value, at, await archiveFacts(call, ledger, around, value));
  requireRegistration(assessed, registrationOf(call));
  // A client that has read a version of the visit writes to a known aircraft.
  const mayBeNew = expected.kind === 'absent' || expected.kind === 'unstated';
  if (mayBeNew) await noteAircraft(call, ledger);
  if (mayBeNew && around.state === null) await requireNotLost(call, ledger);
  const { postedSha256 } = assessed;
  const request = { visit, record, recordSha256: postedSha256, expected, actor: actorOf(call), at };
  const asking = { mayBegin: mayBeNew };
  const outcome = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.keep(request), asking));
  if (outcome.kind === 'created') await noteKept(call, ledger);
  return answerTo(outcome, assessed, call.url.pathname);
}

function answerTo(outcome: KeepOutcome, assessed: Assessed, path: string): Response {
  if (outcome.kind === 'exists') throw new HttpProblem('precondition-failed', 'The visit exists already');
  if (outcome.kind === 'moved') throw moved();
  if (outcome.kind === 'condition-required') throw conditionRequired();
  const { assessmentSha256, isReleasable, findings } = assessed;
  const headers = visitHeaders(outcome.state);
  const isNew = outcome.kind === 'created';
  const body = { ...outcome.state, assessmentSha256, isReleasable, findings };
  return json(body, isNew ? 201 : 200, isNew ? { ...headers, Location: path } : headers);
}

function requireRegistration({ record }: Assessed, registration: string): void {
  const given = record.aircraft.registration;
  if (given.toUpperCase() === registration) return;
  const finding = {
    code: 'RECORD_REGISTRATION_DIFFERS',
    severity: 'blocks',
    pointer: '/aircraft/registration',
    sentence: `Cannot keep the record: its registration must be that of the address, ${registration}: current value is ${given}`,
    remedy: 'Send it to the address of its own aircraft, or correct the registration',
  };
  throw new HttpProblem('record-not-valid', 'There is one defect; nothing was kept', { findings: [finding] });
}

const moved = () => new HttpProblem('precondition-failed', 'The visit has changed since it was read: read it again');

const conditionRequired = () =>
  new HttpProblem('precondition-required', 'If-Match must have the ETag of the visit that you read');
