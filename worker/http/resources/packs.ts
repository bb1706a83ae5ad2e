import type { KeptPack } from '../../archive/ledger/ledger-calls.ts';
import { found, json, reached } from '../answer.ts';
import { blobResponse, IMMUTABLE } from '../blob-response.ts';
import { nextLink, PAGE_QUERY, packOf, pageRequestOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';

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
  summary: 'The manifest of the pack, in canonical JSON',
  answers: file('The manifest', 'application/json'),
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const { manifestSha256, summary } = await keptPack(call);
    const fileName = `${summary.pack}-manifest.json`;
    return blobResponse(call, manifestSha256, { type: 'application/json', fileName, cacheControl: IMMUTABLE });
  },
};
