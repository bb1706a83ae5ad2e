import * as z from 'zod';
import type { KeptPack, PackDigests, RequestKey } from '../../archive/ledger/ledger-calls.ts';
import { LIMITS } from '../../limits.ts';
import { sha256 } from '../../pack/digest.ts';
import type { AttachedFiles, SealedPack } from '../../pipeline.ts';
import type { World } from '../../world.ts';
import { found, json, reached } from '../answer.ts';
import { attachedFiles } from '../attached.ts';
import { requireMatch } from '../conditions.ts';
import { keyReused, requestKeyOf } from '../idempotency.ts';
import { ledgerOf, visitOf } from '../params.ts';
import { Refusal } from '../problem.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import { PackAnswer } from '../schemas.ts';
import { standing } from '../standing.ts';
import { sealKeyOf } from '../workshop-seal.ts';
import { packAnswer } from './packs.ts';

const ReleaseRequest = z.strictObject({
  by: z
    .string()
    .min(1)
    .max(40)
    .meta({ description: 'Person of the record who releases', examples: ['jonas'] }),
  knowsOfNoHazard: z.boolean().meta({
    description: 'That person states to know of no condition that endangers flight; nothing is released without it',
  }),
});
type ReleaseRequest = z.infer<typeof ReleaseRequest>;

export const releaseVisit: Operation = {
  id: 'releaseVisit',
  summary: 'Release the aircraft over the assessment that was read, and seal the pack',
  description:
    'Releasing an amended visit again makes the next issue of its pack, which supersedes the one before. Repeating a release of the same form answers the same pack.',
  headers: {
    'If-Match': 'ETag of the assessment that was read',
    'Idempotency-Key': 'A request repeated under the same key has the same outcome',
  },
  body: { type: 'application/json', description: 'The attestation', schema: ReleaseRequest },
  answers: {
    201: { description: 'Sealed', content: { 'application/json': PackAnswer }, headers: ['Location'] },
    200: { description: 'Released before in the same form', content: { 'application/json': PackAnswer } },
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
    requirePerson(call, body.by);
    const request = await requestKeyOf(call, body);
    const repeated = request && (await earlier(call, request));
    if (repeated) return repeated;
    for (let attempt = 1; attempt <= LIMITS.releaseAttempts; attempt++) {
      const response = await tryRelease(call, body, request);
      if (response) return response;
    }
    throw new Refusal('conflict', 'The ledger of the aircraft keeps changing: read the assessment again');
  },
};

/** A key in a person's hand releases in that person's name alone. */
function requirePerson({ caller }: Call, by: string): void {
  if (caller.person === null || caller.person === by) return;
  throw new Refusal('forbidden', `The key is in the hand of ${caller.person}: it cannot release as ${by}`);
}

async function earlier(call: Call, request: RequestKey): Promise<Response | undefined> {
  const outcome = reached(await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.repeated(request)));
  if (outcome.kind === 'key-reused') throw keyReused();
  return outcome.kind === 'repeated' ? answer(outcome.pack, outcome.wasStanding ? 200 : 201) : undefined;
}

/** The answer to a release of what is released: under a key it is remembered as any other. */
async function standingAnswer(call: Call, pack: KeptPack, request: RequestKey | undefined): Promise<Response> {
  if (request) {
    const at = call.world.now().toISOString();
    const name = ledgerOf(call);
    const ask = call.world.archive.ledger(name, (ledger) => ledger.rememberStanding(request, pack.summary.pack, at));
    if (reached(await ask).kind === 'key-reused') throw keyReused();
  }
  return answer(pack, 200);
}

/** One attempt: read, seal, store the blobs, then commit. Undefined when the ledger moved between reading and committing. */
async function tryRelease(
  call: Call,
  { by, knowsOfNoHazard }: ReleaseRequest,
  request: RequestKey | undefined,
): Promise<Response | undefined> {
  const { world, pipeline, caller } = call;
  const name = ledgerOf(call);
  const { kept, assessed, at } = await standing(call);
  requireMatch(call.request, assessed.assessmentSha256, 'the assessment');
  const { pack: standingPack } = kept;
  if (kept.state === 'released' && standingPack !== null) {
    const pack = reached(await world.archive.ledger(name, (ledger) => ledger.pack(standingPack)));
    return standingAnswer(call, found(pack, 'such pack'), request);
  }
  const place = reached(await world.archive.ledger(name, (ledger) => ledger.place(name.registration, visitOf(call))));
  const files = await attachedFiles(call, assessed);
  const attestation = { by, knowsOfNoHazard, read: assessed.assessmentSha256, at };
  const sealing = { workshop: caller.workshop, key: await sealKeyOf(call) };
  const outcome = await pipeline.seal(assessed, attestation, place, files, sealing);
  if (!outcome.ok) {
    const { findings } = outcome;
    throw new Refusal('release-blocked', 'The findings say what stands against the release', { findings });
  }
  const { summary } = outcome.sealed;
  const digests = await store(world, outcome.sealed, files);
  // As with links, the pointer goes first: one to a pack that the ledger does not know leads to nothing.
  reached(await world.archive.pointFile(digests.pdfSha256, { ...name, pack: place.pack }));
  const { workshop } = caller;
  const commit = { workshop, place, version: kept.version, digests, summary, at, ...(request && { request }) };
  const committed = reached(await world.archive.ledger(name, (ledger) => ledger.commit(commit)));
  if (committed.kind === 'moved') return undefined;
  if (committed.kind === 'key-reused') throw keyReused();
  if (committed.kind === 'already-released') return standingAnswer(call, committed.pack, request);
  world.log({ code: 'RELEASE_SEALED', pack: summary.pack, issue: summary.issue });
  return answer(committed.pack, 201);
}

/** Stores the blobs. Until the ledger names them they are nobody's; a crash here leaves no pack. */
async function store({ archive }: World, sealed: SealedPack, files: AttachedFiles): Promise<PackDigests> {
  const { pdf, pdfSha256, manifestJson, manifestSha256, recordJson } = sealed;
  const documentsJson = JSON.stringify(sealed.documents);
  const [recordSha256, documentsSha256] = await Promise.all([sha256(recordJson), sha256(documentsJson)]);
  const encode = (text: string) => new TextEncoder().encode(text);
  const puts = await Promise.all([
    archive.putBlob(pdfSha256, pdf),
    archive.putBlob(manifestSha256, encode(manifestJson)),
    archive.putBlob(recordSha256, encode(recordJson)),
    archive.putBlob(documentsSha256, encode(documentsJson)),
    ...Object.entries(files).map(([digest, bytes]) => archive.putBlob(digest, bytes)),
  ]);
  for (const put of puts) reached(put);
  return { manifestSha256, pdfSha256, recordSha256, documentsSha256 };
}

function answer(pack: KeptPack, status: 200 | 201): Response {
  return json(packAnswer(pack), status, status === 201 ? { Location: `/v1/packs/${pack.summary.pack}` } : {});
}
