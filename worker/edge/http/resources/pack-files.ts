import * as z from 'zod';
import type { Manifest } from '../../../core/core.ts';
import { LIMITS } from '../../../core/limits.ts';
import type { Reached } from '../../archive/archive.ts';
import { json, orUnavailable } from '../answer.ts';
import { bytesOfDigest } from '../bytes-of-digest.ts';
import { blobOf } from '../lies-shared.ts';
import type { OwnedPack } from '../owned-pack.ts';
import { attachmentsIn } from '../pack-attachments.ts';
import { HttpProblem } from '../problem.ts';
import type { Call, Operation } from '../route.ts';
import { digestOf } from './attachments.ts';
import { ownedPack } from './packs.ts';

const FileState = z.object({
  name: z
    .string()
    .meta({ description: 'pack.pdf, record.json, manifest.json, documents.json, facts.json or attachment' }),
  sha256: z.string(),
  state: z.enum(['whole', 'damaged', 'missing']),
});
type FileState = z.infer<typeof FileState>;

const PackFiles = z
  .object({ pack: z.string(), isWhole: z.boolean(), files: z.array(FileState) })
  .meta({ title: 'Files of a pack, held against their digests' });

export const checkPackFiles: Operation = {
  id: 'checkPackFiles',
  summary: 'Check that every file of a pack is stored as sealed',
  description:
    'Each is read and compared with its digest. An attachment that could not go into the pack was never kept with it and is not listed.',
  answers: { 200: { description: 'Every file', content: { 'application/json': PackFiles } } },
  async handle(call) {
    const owned = await ownedPack(call);
    const files = await statesOf(call, owned);
    const isWhole = files.every(({ state }) => state === 'whole');
    return json({ pack: owned.pack.summary.pack, isWhole, files });
  },
};

export const bringBackPackFile: Operation = {
  id: 'bringBackPackFile',
  summary: 'Restore a damaged or missing file of a sealed pack',
  description:
    'Accepted only if the pack names its SHA-256: only sealed files can be restored. An undamaged file is not changed.',
  body: { type: 'application/octet-stream', description: 'The file', schema: 'binary' },
  answers: { 200: { description: 'Stored undamaged', content: { 'application/json': FileState } } },
  problems: ['body-too-large', 'digest-differs'],
  async handle(call) {
    const owned = await ownedPack(call);
    const digest = digestOf(call);
    const bytes = await bytesOfDigest(call.request, digest, LIMITS.restoredBlobBytes);
    const name = (await namedFiles(call, owned)).get(digest);
    if (name === undefined) throw new HttpProblem('not-found', 'The pack names no such file');
    orUnavailable(await call.world.archive.putBlobs(owned.name.workshop, new Map([[digest, bytes]])));
    return json({ name, sha256: digest, state: 'whole' });
  },
};

async function statesOf(call: Call, owned: OwnedPack): Promise<FileState[]> {
  const states: FileState[] = [];
  for (const [digest, name] of await namedFiles(call, owned)) {
    const state = stateOf(await read(call, owned, digest));
    const wasKept = name !== 'attachment' || state !== 'missing' || (await isShown(call, owned, digest));
    if (wasKept) states.push({ name, sha256: digest, state });
  }
  return states;
}

/** @throws HttpProblem 503 if the archive could not be reached: then nothing is known */
function stateOf(outcome: Reached<Uint8Array | null>): FileState['state'] {
  if (!outcome.ok && outcome.reason === 'damaged') return 'damaged';
  return orUnavailable(outcome) ? 'whole' : 'missing';
}

async function read(call: Call, owned: OwnedPack, digest: string): Promise<Reached<Uint8Array | null>> {
  return call.world.archive.blob(await blobOf(call, owned, digest));
}

/** Returns every file that the pack names, by digest. Attachments are known if the manifest is intact. */
async function namedFiles(call: Call, owned: OwnedPack): Promise<Map<string, string>> {
  const { pdfSha256, recordSha256, manifestSha256, documentsSha256, factsSha256 } = owned.pack;
  const files = new Map([
    [pdfSha256, 'pack.pdf'],
    [recordSha256, 'record.json'],
    [manifestSha256, 'manifest.json'],
    [documentsSha256, 'documents.json'],
  ]);
  if (factsSha256 !== null) files.set(factsSha256, 'facts.json');
  const manifest = await read(call, owned, manifestSha256);
  const attachments = manifest.ok && manifest.value ? attachmentsIn(parsed(manifest.value)) : [];
  for (const attachment of attachments) files.set(attachment, 'attachment');
  return files;
}

/** Whether a document of the pack shows a file: then it was kept with the pack. */
async function isShown(call: Call, owned: OwnedPack, digest: string): Promise<boolean> {
  const documents = await read(call, owned, owned.pack.documentsSha256);
  return documents.ok && documents.value !== null && new TextDecoder().decode(documents.value).includes(digest);
}

function parsed(bytes: Uint8Array): Partial<Manifest> | null {
  try {
    return JSON.parse(new TextDecoder().decode(bytes)) as Partial<Manifest> | null;
  } catch {
    return null;
  }
}
