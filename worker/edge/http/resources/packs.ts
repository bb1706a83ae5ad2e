import type { KeptPack } from '../../archive/ledger/ledger-calls.ts';
import { ArchiveDamaged, json, orNotFound, orUnavailable } from '../answer.ts';
import { blobResponse, IMMUTABLE } from '../blob-response.ts';
import { blobOf } from '../lies-shared.ts';
import type { OwnedPack } from '../owned-pack.ts';
import { nextLink, PAGE_QUERY, packOf, pageRequestOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';
import { sealedForm } from '../sealed-record.ts';
import { shownFiles } from '../shown-files.ts';
import { digestOf, originalFile } from './attachments.ts';

/** Returns a pack as a response: its summary, its digests and the addresses of its files. */
export function packAnswer(pack: KeptPack) {
  const { summary, previous, supersededBy, withdrawal, manifestSha256, pdfSha256, recordSha256 } = pack;
  const at = `/v1/packs/${summary.pack}`;
  const files = { pdf: `${at}/pack.pdf`, record: `${at}/record.json`, manifest: `${at}/manifest.json` };
  return { ...summary, previous, supersededBy, withdrawal, manifestSha256, pdfSha256, recordSha256, files };
}

/**
 * Returns the pack in the path.
 *
 * @throws HttpProblem 404 if the caller's workshop does not have it
 */
export async function ownedPack(call: Call): Promise<OwnedPack> {
  const { pack, ledger: name } = packOf(call);
  const kept = orUnavailable(await call.world.archive.ledger(name, (calls) => calls.pack(pack)));
  return { name, pack: orNotFound(kept, 'such pack') };
}

export const fileNameOf = (pack: string): string => `${pack}-release-pack.pdf`;

export const listPacks: Operation = {
  id: 'listPacks',
  summary: 'All packs of the workshop, newest first',
  description: 'From an index that follows the ledgers within seconds. For the current state, read the aircraft.',
  query: PAGE_QUERY,
  answers: {
    200: {
      description: 'Packs',
      content: { 'application/json': schemas.listOf(schemas.IndexedPack) },
      headers: ['Link'],
    },
  },
  async handle(call) {
    const page = pageRequestOf(call);
    const { items, next } = orUnavailable(await call.world.archive.indexedPacks(call.caller.workshop, page));
    const packs = items.map(({ summary, ...standing }) => ({ ...summary, ...standing }));
    return json({ items: packs }, 200, nextLink(call, next));
  },
};

export const getPack: Operation = {
  id: 'getPack',
  summary: 'A sealed pack: summary, digests, files',
  answers: { 200: { description: 'The pack', content: { 'application/json': schemas.PackAnswer } } },
  async handle(call) {
    return json(packAnswer((await ownedPack(call)).pack));
  },
};

const file = (description: string, type: string) => ({
  200: { description, content: { [type]: 'binary' as const }, headers: ['ETag'] },
  206: { description: 'The requested part', content: { [type]: 'binary' as const } },
  304: { description: 'You have it already' },
});

export const getPackPdf: Operation = {
  id: 'getPackPdf',
  summary: 'The sealed PDF',
  description: 'Never changes; HEAD, If-None-Match and Range are supported.',
  answers: file('The PDF', 'application/pdf'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const owned = await ownedPack(call);
    const { pdfSha256, summary } = owned.pack;
    const fileName = fileNameOf(summary.pack);
    return blobResponse(call, owned, pdfSha256, { type: 'application/pdf', fileName, cacheControl: IMMUTABLE });
  },
};

/** Returns a JSON file of a pack as a response. */
function jsonFile(call: Call, owned: OwnedPack, part: string, digest: string): Promise<Response> {
  const fileName = `${owned.pack.summary.pack}-${part}.json`;
  return blobResponse(call, owned, digest, { type: 'application/json', fileName, cacheControl: IMMUTABLE });
}

export const getPackRecord: Operation = {
  id: 'getPackRecord',
  summary: 'The sealed record of the pack, in canonical JSON',
  answers: file('The record', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const owned = await ownedPack(call);
    return jsonFile(call, owned, 'record', owned.pack.recordSha256);
  },
};

export const getPackManifest: Operation = {
  id: 'getPackManifest',
  summary: 'The manifest of the pack, in canonical JSON',
  answers: file('The manifest', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const owned = await ownedPack(call);
    return jsonFile(call, owned, 'manifest', owned.pack.manifestSha256);
  },
};

export const getPackDocuments: Operation = {
  id: 'getPackDocuments',
  summary: 'The documents of the pack as HTML, exactly as their digests in the manifest require',
  answers: file('A list of documents: id, title, html', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const owned = await ownedPack(call);
    return jsonFile(call, owned, 'documents', owned.pack.documentsSha256);
  },
};

export const getPackFacts: Operation = {
  id: 'getPackFacts',
  summary: 'Facts kept with the pack at its release, in canonical JSON',
  description: 'For lists and pages; packs sealed before facts were kept have none.',
  answers: file('The facts', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const owned = await ownedPack(call);
    return jsonFile(call, owned, 'facts', orNotFound(owned.pack.factsSha256, 'such facts of this pack'));
  },
};

export const getPackAttachment: Operation = {
  id: 'getPackAttachment',
  summary: 'A photograph or document of the pack, as received',
  description: 'The original, with its place and camera data; the pack shows it without.',
  answers: { 200: { description: 'The file', content: { 'application/octet-stream': 'binary' } } },
  async handle(call) {
    const owned = await ownedPack(call);
    const sha256 = digestOf(call);
    const record = await sealedForm(call, owned);
    const isNamed = (record.attachments ?? []).some((attachment) => attachment.sha256 === sha256);
    const body = isNamed ? orUnavailable(await call.world.archive.blob(await blobOf(call, owned, sha256))) : null;
    // A file that could not go into the pack was never kept with it.
    const isLost = isNamed && !body && (await shownFiles(call, owned)).has(sha256);
    if (isLost) throw new ArchiveDamaged(`${owned.pack.summary.pack} ${sha256}`);
    return originalFile(orNotFound(body, 'such file of this pack'));
  },
};
