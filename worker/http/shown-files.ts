import type { Manifest, PackDocument } from '../pipeline.ts';
import type { Call } from './route.ts';
import { type OwnedPack, sealedJson } from './sealed-file.ts';

/** Digests of the photographs and papers that the documents of a pack show, or are followed by: they were kept when it was sealed. */
export async function shownFiles(call: Call, owned: OwnedPack): Promise<Set<string>> {
  const documents = await sealedJson<PackDocument[]>(call, owned, owned.pack.documentsSha256);
  const manifest = await sealedJson<Partial<Manifest> | null>(call, owned, owned.pack.manifestSha256);
  const text = JSON.stringify(documents);
  return new Set(attachmentsIn(manifest).filter((digest) => text.includes(digest)));
}

/** Digests of the attachments that a manifest names, whoever made it. */
export function attachmentsIn(manifest: Partial<Manifest> | null): string[] {
  const attachments: unknown = manifest?.attachments;
  const digests = Array.isArray(attachments)
    ? attachments.map((entry: { sha256?: unknown } | null) => entry?.sha256)
    : [];
  return digests.filter((digest) => typeof digest === 'string' && DIGEST.test(digest)) as string[];
}

const DIGEST = /^[0-9a-f]{64}$/;
