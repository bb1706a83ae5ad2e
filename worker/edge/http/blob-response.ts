import { ArchiveDamaged, orUnavailable } from './answer.ts';
import { wantedRange } from './byte-range.ts';
import { entityTag, isKnown } from './conditions.ts';
import { blobOf } from './lies-shared.ts';
import type { OwnedPack } from './owned-pack.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';
import { sealedFile } from './sealed-file.ts';
import { PDF_POLICY } from './security-headers.ts';

interface BlobOptions {
  type: string;
  fileName: string;
  cacheControl: string;
}

/** Cache header of sealed files, which never change; only the reader's own cache may keep them. */
export const IMMUTABLE = 'private, max-age=31536000, immutable';

/**
 * Returns a sealed file: conditional, in parts if requested, with a name to save it under. It is read whole even for a
 * part, because only the whole can be compared with its digest.
 */
export async function blobResponse(
  call: Call,
  owned: OwnedPack,
  sha256: string,
  options: BlobOptions,
): Promise<Response> {
  const { request, world } = call;
  const tag = entityTag(sha256);
  const headers: Record<string, string> = {
    ETag: tag,
    'Cache-Control': options.cacheControl,
    'Accept-Ranges': 'bytes',
    ...(options.type === 'application/pdf' && PDF_POLICY),
  };
  if (isKnown(request, sha256)) return new Response(null, { status: 304, headers });
  const size = orUnavailable(await world.archive.sizeOfBlob(await blobOf(call, owned, sha256)));
  if (size === null) throw new ArchiveDamaged(`${owned.pack.summary.pack} ${sha256}`);
  const ifRange = request.headers.get('If-Range');
  const wanted = wantedRange(ifRange && ifRange !== tag ? null : request.headers.get('Range'), size);
  if (wanted.kind === 'none') {
    const contentRange = { 'Content-Range': `bytes */${size}` };
    throw new HttpProblem('range-not-satisfiable', `The file has ${size} bytes`, { headers: contentRange });
  }
  headers['Content-Type'] = options.type;
  headers['Content-Disposition'] = `inline; filename="${options.fileName}"`;
  if (request.method === 'HEAD') return new Response(null, { headers: { ...headers, 'Content-Length': String(size) } });
  const bytes = await sealedFile(call, owned, sha256);
  headers['Content-Length'] = String(bytes.length);
  if (wanted.kind === 'whole') return new Response(bytes as Uint8Array<ArrayBuffer>, { headers });
  const { offset, length } = wanted.range;
  headers['Content-Range'] = `bytes ${offset}-${offset + length - 1}/${size}`;
  headers['Content-Length'] = String(length);
  return new Response(bytes.slice(offset, offset + length), { status: 206, headers });
}
