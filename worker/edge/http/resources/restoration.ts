import * as z from 'zod';
import { LIMITS } from '../../../core/limits.ts';
import { keySet } from '../../../core/seal/key.ts';
import { verifyFile } from '../../../core/seal/verify.ts';
import type { LedgerName, SealFacts } from '../../archive/archive.ts';
import type { AircraftOverview, Restoration } from '../../archive/ledger/ledger-calls.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { bytesOfDigest } from '../bytes-of-digest.ts';
import { noteAircraft, noteKept } from '../known-aircraft.ts';
import { ledgerOf } from '../params.ts';
import { HttpProblem } from '../problem.ts';
import { requestBody } from '../request-body.ts';
import { LedgerRequest, restorationFrom } from '../restoration-request.ts';
import type { Call, Operation } from '../route.ts';
import { digestOf } from './attachments.ts';

const Brought = z
  .object({
    sha256: z.string(),
    bytes: z.int(),
    pack: z.string().nullable().meta({ description: 'Name of the pack, if the file is one sealed by the workshop' }),
  })
  .meta({ title: 'Blob brought for a restoration' });

export const bringBlob: Operation = {
  id: 'bringBlob',
  summary: 'Upload a file for the restoration of a ledger',
  description:
    'PDF, record, manifest, documents, facts and attachments of its packs, each under its SHA-256. A sealed PDF is checked with the published keys of the workshop, so import those first.',
  body: { type: 'application/octet-stream', description: 'The file', schema: 'binary' },
  answers: { 200: { description: 'Kept', content: { 'application/json': Brought } } },
  problems: ['body-too-large', 'digest-differs'],
  async handle(call) {
    const name = ledgerOf(call);
    const digest = digestOf(call);
    const bytes = await bytesOfDigest(call.request, digest, LIMITS.restoredBlobBytes);
    const seal = await sealOf(call, bytes);
    orUnavailable(await call.world.archive.stageBlob(name, digest, bytes, seal));
    return json({ sha256: digest, bytes: bytes.length, pack: seal?.pack ?? null });
  },
};

/** Returns the facts in the seal of a file, if it is a genuine pack by the keys of the workshop. */
async function sealOf(call: Call, bytes: Uint8Array): Promise<SealFacts | null> {
  const keys = orUnavailable(await call.world.archive.workshop(call.caller.workshop, (calls) => calls.sealKeys()));
  const verdict = await verifyFile(bytes, keySet(orNotFound(keys, 'such workshop')));
  if (verdict.kind !== 'genuine') return null;
  const { workshop, registration, pack, issuedAt, manifestSha256, recordSha256 } = verdict.claims;
  return { workshop, registration, pack, issuedAt, manifestSha256, recordSha256, kid: verdict.kid };
}

const Restored = z
  .object({ registration: z.string(), seq: z.int(), digest: z.string(), visits: z.int(), packs: z.int() })
  .meta({ title: 'Restored ledger' });

export const restoreLedger: Operation = {
  id: 'restoreLedger',
  summary: 'Restore the ledger of an aircraft from an export',
  description:
    'Only if nothing was ever kept of the aircraft, and only the whole ledger: visits and packs follow from the chain, which must be valid from its first entry. Every pack must have been uploaded, be sealed by a key of this workshop, and have the documents that its manifest names. Summaries of packs are calculated, not copied. Repeating the call changes nothing. Links are not restored: they belong to an address.',
  body: { type: 'application/json', description: 'Chain, records of the visits, summaries', schema: LedgerRequest },
  answers: {
    200: { description: 'Already restored', content: { 'application/json': Restored } },
    201: { description: 'Restored', content: { 'application/json': Restored } },
  },
  problems: ['conflict', 'malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const name = ledgerOf(call);
    const body = await requestBody(call.request, LedgerRequest, LIMITS.restoredLedgerBytes);
    const { archive } = call.world;
    const standing = orUnavailable(await archive.ledger(name, (ledger) => ledger.overview()));
    // Checked first, because the staged files are deleted once the ledger is restored.
    if (standing.head.digest === body.entries.at(-1)?.digest) return answer(name, standing, 200);
    if (standing.head.seq > 0) throw notEmpty(name);
    const staged = orUnavailable(await archive.stagedBlobs(name));
    const { restoration, digests } = await restorationFrom(call, name, body, staged);
    await noteAircraft(call, name);
    orUnavailable(await archive.takeOverBlobs(name, digests));
    await pointFiles(call, name, restoration);
    const asking = { mayBegin: true };
    const outcome = orUnavailable(await archive.ledger(name, (ledger) => ledger.restore(restoration), asking));
    if (outcome.kind === 'not-empty') throw notEmpty(name);
    await noteKept(call, name);
    orUnavailable(await archive.unstageBlobs(name, [...staged.keys()]));
    const { registration } = name;
    call.world.log({ code: 'LEDGER_RESTORED', registration, entries: restoration.entries.length });
    const stands = orUnavailable(await archive.ledger(name, (ledger) => ledger.overview()));
    return answer(name, stands, outcome.kind === 'restored' ? 201 : 200);
  },
};

const notEmpty = ({ registration }: LedgerName) =>
  new HttpProblem('conflict', `The ledger of ${registration} is not empty: nothing was restored`);

/**
 * Writes the pointers of the files. As with a release, they come first: one to a pack that the ledger does not know
 * opens nothing.
 */
async function pointFiles({ world }: Call, name: LedgerName, { packs }: Restoration): Promise<void> {
  for (const { pdfSha256, summary } of packs)
    orUnavailable(await world.archive.pointFile(pdfSha256, { ...name, pack: summary.pack }));
}

function answer({ registration }: LedgerName, { head, visits, packs }: AircraftOverview, status: 200 | 201): Response {
  return json({ registration, ...head, visits, packs }, status);
}
