import type { Expected } from '../archive/ledger/ledger-calls.ts';
import { HttpProblem } from './problem.ts';

// A `PUT` of the stored record itself succeeds, also under an `If-Match` that it made outdated (RFC 9110, 13.1.1
// allows it). A client that lost a response could not tell its own amendment from another one.

/** Returns a strong entity tag (RFC 9110, 8.8.3) around a digest. */
export const entityTag = (digest: string): string => `"${digest}"`;

/** Returns the condition of a write from `If-Match` or `If-None-Match`: what its sender has read (RFC 9110, 13.1). */
export function expectedOf(request: Request): Expected {
  const ifMatch = request.headers.get('If-Match')?.trim();
  const ifNoneMatch = request.headers.get('If-None-Match')?.trim();
  if (ifMatch !== undefined && ifNoneMatch !== undefined)
    throw new HttpProblem('malformed-request', 'Send If-Match or If-None-Match, not both');
  if (ifMatch === '*') return { kind: 'present' };
  if (ifMatch !== undefined) return { kind: 'one-of', recordSha256: strongTags(ifMatch) };
  if (ifNoneMatch === '*') return { kind: 'absent' };
  if (ifNoneMatch !== undefined) throw new HttpProblem('malformed-request', 'If-None-Match of a write must be *');
  return { kind: 'unstated' };
}

/** Returns the digests in an `If-Match`. A weak tag never matches, so it is left out. */
function strongTags(header: string): string[] {
  return [...header.matchAll(/(W\/)?"([^"]*)"/g)].filter(([, weak]) => !weak).map(([, , digest]) => digest ?? '');
}

/** Whether the reader already has this version (RFC 9110, 13.1.2: weak comparison). */
export function isKnown(request: Request, digest: string): boolean {
  const header = request.headers.get('If-None-Match')?.trim();
  if (!header) return false;
  return header === '*' || [...header.matchAll(/"([^"]*)"/g)].some(([, known]) => known === digest);
}

/**
 * Checks that a release names the current digest.
 *
 * @throws HttpProblem 428 without `If-Match`, 412 if it names another
 */
export function requireMatch(request: Request, digest: string, whatToRead: string): void {
  const header = request.headers.get('If-Match')?.trim();
  if (!header) throw new HttpProblem('precondition-required', `If-Match must carry the ETag of ${whatToRead}`);
  if (strongTags(header).includes(digest)) return;
  const headers = { ETag: entityTag(digest) };
  throw new HttpProblem('precondition-failed', `${whatToRead} has changed since it was read: read it again`, {
    headers,
  });
}
