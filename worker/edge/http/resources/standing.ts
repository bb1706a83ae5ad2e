import * as z from 'zod';
import { SHA256 } from '../../../core/patterns.ts';
import { CLASSES } from '../../../core/record/class.ts';
import type { StandingProof } from '../../../core/record/standing.ts';
import { differences, standingChanges } from '../../../core/record/standing-changes.ts';
import type { StandingFile } from '../../../core/record/standing-file.ts';
import { states, takenOver } from '../../../core/record/take-over.ts';
import { keySet } from '../../../core/seal/key.ts';
import { kidOf } from '../../../core/seal/verify.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { peopleOf } from '../archive-facts.ts';
import { entityTag } from '../conditions.ts';
import { currentAssessment } from '../current-assessment.ts';
import { requireNotLost } from '../known-aircraft.ts';
import { openBefore } from '../open-before.ts';
import { missing, openedLink } from '../opened-link.ts';
import type { OwnedPack } from '../owned-pack.ts';
import { ledgerOf, registrationOf, visitOf } from '../params.ts';
import { HttpProblem } from '../problem.ts';
import { defect, requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import { KeptAnswer } from '../schemas.ts';
import { sealedFile } from '../sealed-file.ts';
import { type StandingFiles, standingFile, standingFiles, standingIn } from '../standing.ts';
import { NextAnswer, StandingState } from '../standing-schemas.ts';
import { keep, requireCondition, visitToChange } from './keep-visit.ts';
import { keptVisit } from './visits.ts';

const Class = z.enum(CLASSES).optional();

export const getNext: Operation = {
  id: 'getNext',
  summary: 'The beginning of the next record of an aircraft, with all that is valid of it',
  description:
    'The record names the standing file after the newest release instead of repeating it: add what the visit did. An aircraft without a release begins with a blank of its class. Nothing here is stored: it follows from the sealed records.',
  query: { class: `Class of an aircraft without a release: ${CLASSES.join(', ')}` },
  answers: { 200: { description: 'The beginning', content: { 'application/json': NextAnswer } } },
  async handle(call) {
    const name = ledgerOf(call);
    const parsed = Class.safeParse(call.url.searchParams.get('class') ?? undefined);
    if (!parsed.success) throw new HttpProblem('malformed-request', `class must be one of ${CLASSES.join(', ')}`);
    const packs = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.newestIssues()));
    if (packs.length === 0) await requireNotLost(call, name);
    const pack = packs.findLast(({ withdrawal }) => withdrawal === null);
    const people = await peopleOf(call);
    if (!pack) {
      const first = call.pipeline.firstRecord(name.registration, parsed.data);
      const blank = { pack: null, ...first, sections: {}, open: [], readings: {} } satisfies NextAnswer;
      return json({ ...blank, people });
    }
    const past = await openBefore(call, name, packs);
    const file = orNotFound((await standingFile(call, { name, pack }, past)) ?? null, 'standing file after this pack');
    return json({ ...nextAnswer(call, file), people });
  },
};

function nextAnswer({ pipeline, world }: Call, file: StandingFile, proof?: StandingProof): NextAnswer {
  const { readings, ...next } = pipeline.nextRecord(file, world.now().toISOString(), proof);
  return { ...next, readings: { ...readings } };
}

export const openLinkNext: Operation = {
  id: 'openLinkNext',
  summary: 'The beginning of the next record from a link: for the workshop that the aircraft moves to',
  description:
    'The record names the standing file after this pack and contains the sealed files that prove it. People and letterhead of the workshop that sealed it are not in it.',
  answers: {
    200: { description: 'The beginning', content: { 'application/json': NextAnswer } },
    404: { description: 'The link is unknown, has expired or was revoked', content: { 'text/html': 'text' } },
  },
  problems: ['conflict'],
  async handle(call) {
    const opened = await openedLink(call, 'document');
    if (!opened) return missing(call);
    const { summary, withdrawal } = opened.pack;
    if (withdrawal) throw new HttpProblem('conflict', `${summary.pack} was withdrawn: nothing builds on it`);
    const reference = { pack: summary.pack, sha256: opened.pack.recordSha256 };
    const proof = await proofOf(call, opened);
    const proved = proof && (await call.pipeline.provedFile(reference, proof));
    const { file } = orNotFound(proved ?? null, 'standing file after this pack');
    return json(nextAnswer(call, file, proof));
  },
};

/** Returns the sealed files of a pack that prove its standing file. */
async function proofOf(call: Call, owned: OwnedPack): Promise<StandingProof | undefined> {
  const { pdfSha256, recordSha256, manifestSha256, factsSha256, isRestored } = owned.pack;
  const text = async (file: string) => new TextDecoder().decode(await sealedFile(call, owned, file));
  const inPack = call.pipeline.proofInPack(await sealedFile(call, owned, pdfSha256));
  const keys = orUnavailable(await call.world.archive.workshop(owned.name.workshop, (calls) => calls.sealKeys()));
  const kid = inPack && kidOf(inPack.seal);
  const key = keySet(keys ?? []).keys.find((each) => each.kid === kid);
  if (!inPack || key?.x === undefined) return undefined;
  const facts = factsSha256 === null || isRestored ? undefined : await text(factsSha256);
  return {
    seal: inPack.seal,
    keyX: key.x,
    record: await text(recordSha256),
    ...(facts !== undefined && { manifest: await text(manifestSha256), facts }),
  };
}

/** Returns the file that a kept record names, and the one after the newest release before its visit. */
async function filesOf(call: Call, record: unknown): Promise<StandingFiles> {
  const name = ledgerOf(call);
  const reference = orNotFound(standingIn(record) ?? null, 'standing file that the record of this visit names');
  const ask = call.world.archive.ledger(name, (ledger) => ledger.packsAround(visitOf(call)));
  const { before } = orUnavailable(await ask);
  const pack = before.findLast(({ withdrawal }) => withdrawal === null);
  const last = pack && { owned: { name, pack }, past: await openBefore(call, name, before) };
  return standingFiles(call, reference, last);
}

export const getWholeRecord: Operation = {
  id: 'getWholeRecord',
  summary: 'The record of a visit with everything that it relies on',
  description:
    'What the working record leaves out comes from the standing file that it names and from the people table. A release seals this form.',
  answers: {
    200: { description: 'The record', content: { 'application/json': 'VisitRecord' }, headers: ['ETag'] },
  },
  async handle(call) {
    const { recordJson, recordSha256 } = (await currentAssessment(call)).assessed;
    const headers = { 'Content-Type': 'application/json', ETag: entityTag(recordSha256) };
    return new Response(recordJson, { headers: { ...headers, 'Cache-Control': 'private, no-store' } });
  },
};

export const getVisitStanding: Operation = {
  id: 'getVisitStanding',
  summary: 'The standing file of a visit, and what a newer release changed in it',
  description:
    'The record of the visit moves to a newer file only when that is taken over. The ETag is that of the visit: name it in If-Match to take the newer file over.',
  answers: {
    200: { description: 'Named and newest file', content: { 'application/json': StandingState }, headers: ['ETag'] },
  },
  async handle(call) {
    const { record: text, recordSha256 } = await keptVisit(call);
    const record: unknown = JSON.parse(text);
    const { named, newest } = await filesOf(call, record);
    const changes = named && newest && named !== newest ? standingChanges(named, newest) : [];
    const body: StandingState = {
      named: standingIn(record) ?? null,
      newest: newest ? { pack: newest.pack, sha256: newest.sha256 } : null,
      isNewest: named !== undefined && newest !== undefined && named.sha256 === newest.sha256,
      changes: changes.map((change) => ({ ...change, isStated: states(record, change.part) })),
      open: differences(openIn(named), openIn(newest), []),
    };
    return json(body, 200, { ETag: entityTag(recordSha256), 'Cache-Control': 'private, no-store' });
  },
};

/** Returns the open items of a file by their names. */
const openIn = (file: StandingFile | undefined): object =>
  Object.fromEntries((file?.open ?? []).map((item) => [(item as { item?: string }).item ?? '', item]));

const TakeOver = z.strictObject({
  pack: z.string().meta({ description: 'Newest pack, as read', examples: ['Q-SLM-P2-1'] }),
  sha256: z.string().regex(SHA256).meta({ description: 'Digest of its sealed record, as read' }),
  take: z
    .array(z.string().max(300))
    .max(1000)
    .meta({ description: 'Parts that the record states itself, and for which it now takes the value of the file' }),
});

export const takeOverStanding: Operation = {
  id: 'takeOverStanding',
  summary: 'Build the record of a visit on the newest standing file',
  description:
    'Parts that the record does not state follow the newer file. Parts that it states keep their value, except those in `take`.',
  headers: { 'If-Match': 'ETag of the visit as you read it' },
  body: { type: 'application/json', description: 'The file to take over', schema: TakeOver },
  answers: { 200: { description: 'Taken over', content: { 'application/json': KeptAnswer }, headers: ['ETag'] } },
  problems: [
    'malformed-json',
    'conflict',
    'precondition-failed',
    'precondition-required',
    'body-too-large',
    'unsupported-media-type',
    'request-not-valid',
    'record-not-valid',
  ],
  async handle(call) {
    const expected = requireCondition(call);
    const { pack, sha256, take } = await requestBody(call.request, TakeOver);
    const { record: text, recordSha256 } = await visitToChange(call, expected);
    const record: unknown = JSON.parse(text);
    const { newest } = await filesOf(call, record);
    if (newest?.pack !== pack || newest.sha256 !== sha256)
      throw new HttpProblem(
        'conflict',
        `The newest release of ${registrationOf(call)} is ${newest?.pack ?? 'none'}: read what changed again`,
      );
    const { record: next, notStated } = takenOver(record, newest, take);
    if (notStated.length > 0) throw notValid(take, notStated);
    return keep(call, next, JSON.stringify(next), { kind: 'one-of', recordSha256: [recordSha256] });
  },
};

function notValid(take: readonly string[], notStated: readonly string[]): HttpProblem {
  const findings = notStated.map((part) =>
    defect('REQUEST_VALUE_WRONG', `/take/${take.indexOf(part)}`, `The record does not state ${part}`),
  );
  return new HttpProblem('request-not-valid', `${findings.length} defects`, { findings });
}
