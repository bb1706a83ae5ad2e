import * as z from 'zod';
import type { AttachedFiles, SealedPack } from '../../../core/core.ts';
import { LIMITS } from '../../../core/limits.ts';
import { sha256 } from '../../../core/pack/digest.ts';
import type { KeptPack, PackDigests, RequestKey, VisitToSeal } from '../../archive/ledger/ledger-calls.ts';
import type { World } from '../../world.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { attachedFiles } from '../attached.ts';
import { requireMatch } from '../conditions.ts';
import { assessedAmong } from '../current-assessment.ts';
import { keyReused, requestKeyOf } from '../idempotency.ts';
import { actorOf, requireReleaser } from '../in-whose-name.ts';
import { noteKept } from '../known-aircraft.ts';
import { ledgerOf, visitOf } from '../params.ts';
import { HttpProblem } from '../problem.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import { PackAnswer } from '../schemas.ts';
import { sealKeyOf, workshopName } from '../workshop-seal.ts';
import { packAnswer } from './packs.ts';

const ReleaseRequest = z.strictObject({
  by: z
    .string()
    .min(1)
    .max(40)
    .meta({ description: 'Person of the record who releases', examples: ['jonas'] }),
  knowsOfNoHazard: z.boolean().meta({
    description: 'Statement of that person to know of no condition that endangers flight; required for every release',
  }),
});
type ReleaseRequest = z.infer<typeof ReleaseRequest>;

export const releaseVisit: Operation = {
  id: 'releaseVisit',
  summary: 'Release the aircraft by the assessment that was read, and seal the pack',
  description:
    'Releasing an amended visit again makes the next issue of its pack, which supersedes the one before. Repeating a release of the same version returns the same pack, unless that was withdrawn.',
  headers: {
    'If-Match': 'ETag of the assessment that was read',
    'Idempotency-Key': 'A request repeated under the same key has the same outcome',
  },
  body: { type: 'application/json', description: 'The attestation', schema: ReleaseRequest },
  answers: {
    201: { description: 'Sealed', content: { 'application/json': PackAnswer }, headers: ['Location'] },
    200: { description: 'Released before in the same version', content: { 'application/json': PackAnswer } },
  },
  problems: [
    'malformed-json',
    'conflict',
    'release-blocked',
    'precondition-failed',
    'precondition-required',
    'body-too-large',
    'unsupported-media-type',
    'request-not-valid',
    'idempotency-key-reused',
  ],
  async handle(call) {
    const body = await requestBody(call.request, ReleaseRequest);
    await requireReleaser(call, body.by);
    const request = await requestKeyOf(call, body);
    const repeated = request && (await earlier(call, request));
    if (repeated) return repeated;
    for (let attempt = 1; attempt <= LIMITS.releaseAttempts; attempt++) {
      const response = await tryRelease(call, body, request);
      if (response) return response;
    }
    throw new HttpProblem('conflict', 'The ledger of the aircraft keeps changing: read the assessment again');
  },
};

async function earlier(call: Call, request: RequestKey): Promise<Response | undefined> {
  const outcome = orUnavailable(await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.repeated(request)));
  if (outcome.kind === 'key-reused') throw keyReused();
  return outcome.kind === 'repeated' ? answer(standingPack(outcome.pack), outcome.wasStanding ? 200 : 201) : undefined;
}

/**
 * Returns the pack if it is current.
 *
 * @throws HttpProblem 409 for a withdrawn pack, which must not be reported as released
 */
function standingPack(pack: KeptPack): KeptPack {
  const { withdrawal, summary } = pack;
  if (!withdrawal) return pack;
  throw new HttpProblem(
    'conflict',
    `${summary.pack} was withdrawn (${withdrawal.reason}): amend the record with what was wrong, and release that; it becomes the next issue`,
  );
}

/** Returns the response to a repeated release: under a key it is recorded like any other. */
async function standingAnswer(call: Call, pack: KeptPack, request: RequestKey | undefined): Promise<Response> {
  if (request) {
    const at = call.world.now().toISOString();
    const name = ledgerOf(call);
    const ask = call.world.archive.ledger(name, (ledger) => ledger.rememberStanding(request, pack.summary.pack, at));
    if (orUnavailable(await ask).kind === 'key-reused') throw keyReused();
  }
  return answer(pack, 200);
}

/**
 * Tries a release, in its turn: read, seal, store the blobs, then commit. Returns undefined if the ledger changed
 * between reading and committing.
 */
async function tryRelease(
  call: Call,
  request: ReleaseRequest,
  key: RequestKey | undefined,
): Promise<Response | undefined> {
  const name = ledgerOf(call);
  const visit = visitOf(call);
  const { archive } = call.world;
  const among = orUnavailable(await archive.ledger(name, (ledger) => ledger.visitToSeal(name.registration, visit)));
  try {
    return await releaseInTurn(call, among, request, key);
  } catch (error) {
    const { turn } = among;
    // Others need not wait until it times out.
    if (turn !== null) await archive.ledger(name, (ledger) => ledger.leaveTurn(turn));
    throw error;
  }
}

async function releaseInTurn(
  call: Call,
  among: VisitToSeal,
  { by, knowsOfNoHazard }: ReleaseRequest,
  request: RequestKey | undefined,
): Promise<Response | undefined> {
  const { world, pipeline, caller } = call;
  const name = ledgerOf(call);
  const { kept, assessed, place, at } = await assessedAmong(call, among);
  requireMatch(call.request, assessed.assessmentSha256, 'the assessment');
  const { pack: released } = kept;
  if (kept.state === 'released' && released !== null) {
    const pack = orUnavailable(await world.archive.ledger(name, (ledger) => ledger.pack(released)));
    return standingAnswer(call, standingPack(orNotFound(pack, 'such pack')), request);
  }
  const files = await attachedFiles(call, assessed);
  const attestation = { by, knowsOfNoHazard, read: assessed.assessmentSha256, at };
  const actor = actorOf(call);
  const id = caller.workshop;
  const sealing = { workshop: { id, name: await workshopName(call, id) }, key: await sealKeyOf(call), by: actor };
  const outcome = await pipeline.seal(assessed, attestation, place, files, sealing);
  if (!outcome.ok) {
    const { findings } = outcome;
    throw new HttpProblem('release-blocked', 'The findings show what blocks the release', { findings });
  }
  const { summary } = outcome.sealed;
  const digests = await store(call, outcome.sealed, files);
  // As with links, the pointer is written first: one to a pack that the ledger does not know opens nothing.
  orUnavailable(await world.archive.pointFile(digests.pdfSha256, { ...name, pack: place.pack }));
  // From here on, an empty ledger of this aircraft is a lost one.
  await noteKept(call, name);
  const sealed = { place, version: kept.version, digests, summary, actor, at };
  const commit = { workshop: id, turn: among.turn, ...sealed, ...(request && { request }) };
  const committed = orUnavailable(await world.archive.ledger(name, (ledger) => ledger.commit(commit)));
  if (committed.kind === 'moved') return undefined;
  if (committed.kind === 'clock-behind') return waitForClock(world, committed.lastAt);
  if (committed.kind === 'key-reused') throw keyReused();
  if (committed.kind === 'already-released') return standingAnswer(call, committed.pack, request);
  world.log({ code: 'RELEASE_SEALED', pack: summary.pack, issue: summary.issue, key: actor.key });
  return answer(committed.pack, 201);
}

/**
 * Returns undefined if the ledger has a slightly later entry, made while this pack was sealed: another attempt comes
 * after it.
 *
 * @throws HttpProblem 409 if the clock is before the latest entry
 */
function waitForClock(world: World, lastAt: string): undefined {
  const now = world.now().toISOString();
  if (Date.parse(now) >= Date.parse(lastAt)) return undefined;
  throw new HttpProblem(
    'conflict',
    `Nothing is sealed before the latest entry of the ledger, ${lastAt}; the clock of the service says ${now}: set it right`,
  );
}

/** Stores the blobs. Until the ledger names them they belong to no pack; a crash here leaves none. */
async function store({ world, caller }: Call, sealed: SealedPack, files: AttachedFiles): Promise<PackDigests> {
  const { pdf, pdfSha256, manifestJson, manifestSha256, recordJson, factsJson, factsSha256 } = sealed;
  const documentsJson = JSON.stringify(sealed.documents);
  const [recordSha256, documentsSha256] = await Promise.all([sha256(recordJson), sha256(documentsJson)]);
  const encode = (text: string) => new TextEncoder().encode(text);
  const blobs = new Map([
    [pdfSha256, pdf],
    [manifestSha256, encode(manifestJson)],
    [recordSha256, encode(recordJson)],
    [documentsSha256, encode(documentsJson)],
    [factsSha256, encode(factsJson)],
    ...Object.entries(files),
  ]);
  orUnavailable(await world.archive.putBlobs(caller.workshop, blobs));
  return { manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256 };
}

function answer(pack: KeptPack, status: 200 | 201): Response {
  return json(packAnswer(pack), status, status === 201 ? { Location: `/v1/packs/${pack.summary.pack}` } : {});
}
