import { found, reached } from './answer.ts';
import { wantedRange } from './byte-range.ts';
import { entityTag, isKnown } from './conditions.ts';
import { Refusal } from './problem.ts';
import type { Call } from './route.ts';
import { PDF_POLICY } from './security-headers.ts';

interface BlobOptions {
  type: string;
  fileName: string;
  cacheControl: string;
}

/** A sealed file never changes; only its owner's own cache may keep it. */
export const IMMUTABLE = 'private, max-age=31536000, immutable';

/** A blob of the archive as a file: conditional, in parts where asked for, with a name to save it under. */
export async function blobResponse(call: Call, sha256: string, options: BlobOptions): Promise<Response> {
  const { request, world } = call;
  const tag = entityTag(sha256);
  const headers: Record<string, string> = {
    ETag: tag,
    'Cache-Control': options.cacheControl,
    'Accept-Ranges': 'bytes',
    ...(options.type === 'application/pdf' && PDF_POLICY),
  };
  if (isKnown(request, sha256)) return new Response(null, { status: 304, headers });
  const size = found(reached(await world.archive.sizeOfBlob(sha256)), 'such file');
  const ifRange = request.headers.get('If-Range');
  const wanted = wantedRange(ifRange && ifRange !== tag ? null : request.headers.get('Range'), size);
  if (wanted.kind === 'none') {
    const contentRange = { 'Content-Range': `bytes */${size}` };
    throw new Refusal('range-not-satisfiable', `The file has ${size} bytes`, { headers: contentRange });
  }
  headers['Content-Type'] = options.type;
  headers['Content-Disposition'] = `inline; filename="${options.fileName}"`;
  if (request.method === 'HEAD') return new Response(null, { headers: { ...headers, 'Content-Length': String(size) } });
  const range = wanted.kind === 'part' ? wanted.range : undefined;
  const body = found(reached(await world.archive.blob(sha256, range)), 'such file');
  if (!range) return new Response(body, { headers: { ...headers, 'Content-Length': String(size) } });
  headers['Content-Range'] = `bytes ${range.offset}-${range.offset + range.length - 1}/${size}`;
  headers['Content-Length'] = String(range.length);
  return new Response(body, { status: 206, headers });
}
