import type { Manifest, PackDocument } from '../../core/core.ts';
import { SHA256 } from '../../core/patterns.ts';

/** Returns the digests of the attachments in a manifest of any origin. */
export function attachmentsIn(manifest: Partial<Manifest> | null): string[] {
  const attachments: unknown = manifest?.attachments;
  const digests = Array.isArray(attachments)
    ? attachments.map((entry: { sha256?: unknown } | null) => entry?.sha256)
    : [];
  return digests.filter((digest) => typeof digest === 'string' && SHA256.test(digest)) as string[];
}

/** Returns the digests of the photographs and documents that are shown in documents or follow them. */
export function shownIn(documents: readonly PackDocument[], manifest: Partial<Manifest> | null): Set<string> {
  const text = JSON.stringify(documents);
  return new Set(attachmentsIn(manifest).filter((digest) => text.includes(digest)));
}
