import type { KeptPack } from '../../archive/ledger/ledger-calls.ts';
import type { VisitRecord } from '../../visit/record.ts';
import { found, json, reached } from '../answer.ts';
import { blobResponse, IMMUTABLE } from '../blob-response.ts';
import { nextLink, PAGE_QUERY, packOf, pageRequestOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';
import { digestOf, originalFile } from './attachments.ts';

/** A pack as an answer: what lists show, its digests and where its files are. */
export function packAnswer(pack: KeptPack) {
  const { summary, previous, supersededBy, withdrawal, manifestSha256, pdfSha256, recordSha256 } = pack;
  const at = `/v1/packs/${summary.pack}`;
  const files = { pdf: `${at}/pack.pdf`, record: `${at}/record.json`, manifest: `${at}/manifest.json` };
  return { ...summary, previous, supersededBy, withdrawal, manifestSha256, pdfSha256, recordSha256, files };
}

/** @throws Refusal 404 for what the caller's workshop does not have */
export async function keptPack(call: Call): Promise<KeptPack> {
  const { pack, ledger } = packOf(call);
  return found(reached(await call.world.archive.ledger(ledger, (calls) => calls.pack(pack))), 'such pack');
}

export const fileNameOf = (pack: string): string => `${pack}-release-pack.pdf`;

export const listPacks: Operation = {
  id: 'listPacks',
  summary: 'All packs of the workshop, newest first',
  description:
    'Out of an index that follows the ledgers within seconds; what must be certain is asked of the aircraft.',
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
    const { items, next } = reached(await call.world.archive.indexedPacks(call.caller.workshop, page));
    const packs = items.map(({ summary, ...standing }) => ({ ...summary, ...standing }));
    return json({ items: packs }, 200, nextLink(call, next));
  },
};

export const getPack: Operation = {
  id: 'getPack',
  summary: 'A sealed pack: summary, digests, files',
  answers: { 200: { description: 'The pack', content: { 'application/json': schemas.PackAnswer } } },
  async handle(call) {
    return json(packAnswer(await keptPack(call)));
  },
};

const file = (description: string, type: string) => ({
  200: { description, content: { [type]: 'binary' as const }, headers: ['ETag'] },
  206: { description: 'The part asked for', content: { [type]: 'binary' as const } },
  304: { description: 'You have it already' },
});

export const getPackPdf: Operation = {
  id: 'getPackPdf',
  summary: 'The sealed PDF',
  description: 'Never changes; HEAD, If-None-Match and Range are understood.',
  answers: file('The PDF', 'application/pdf'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const { pdfSha256, summary } = await keptPack(call);
    const fileName = fileNameOf(summary.pack);
    return blobResponse(call, pdfSha256, { type: 'application/pdf', fileName, cacheControl: IMMUTABLE });
  },
};

export const getPackRecord: Operation = {
  id: 'getPackRecord',
  summary: 'The record that the pack was sealed from, in canonical JSON',
  answers: file('The record', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const { recordSha256, summary } = await keptPack(call);
    const fileName = `${summary.pack}-record.json`;
    return blobResponse(call, recordSha256, { type: 'application/json', fileName, cacheControl: IMMUTABLE });
  },
};

export const getPackManifest: Operation = {
  id: 'getPackManifest',
  summary: 'The manifest of the pack, in canonical JSON',
  answers: file('The manifest', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const { manifestSha256, summary } = await keptPack(call);
    const fileName = `${summary.pack}-manifest.json`;
    return blobResponse(call, manifestSha256, { type: 'application/json', fileName, cacheControl: IMMUTABLE });
  },
};

export const getPackDocuments: Operation = {
  id: 'getPackDocuments',
  summary: 'The documents of the pack as HTML, in the form in which their digests stand in the manifest',
  answers: file('A list of documents: id, title, html', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const { documentsSha256, summary } = await keptPack(call);
    const fileName = `${summary.pack}-documents.json`;
    return blobResponse(call, documentsSha256, { type: 'application/json', fileName, cacheControl: IMMUTABLE });
  },
};

export const getPackAttachment: Operation = {
  id: 'getPackAttachment',
  summary: 'A photograph or paper of the pack as it was handed in',
  description: 'The original, with all that it tells of place and camera: the pack itself shows it without.',
  answers: { 200: { description: 'The file', content: { 'application/octet-stream': 'binary' } } },
  async handle(call) {
    const { recordSha256 } = await keptPack(call);
    const sha256 = digestOf(call);
    const { archive } = call.world;
    const record = new Response(found(reached(await archive.blob(recordSha256)), 'such record'));
    const { attachments = [] } = await record.json<Pick<VisitRecord, 'attachments'>>();
    const isNamed = attachments.some((attachment) => attachment.sha256 === sha256);
    const body = isNamed ? reached(await archive.blob(sha256)) : null;
    return originalFile(found(body, 'such file of this pack'));
  },
};
