import type { AttachmentFact } from '../../../core/core.ts';
import { LIMITS } from '../../../core/limits.ts';
import { SHA256 } from '../../../core/patterns.ts';
import { saidFault } from '../../../core/text/faults.ts';
import { inEnglish } from '../../../core/text/formatter.ts';
import type { AttachmentName } from '../../archive/archive.ts';
import { json, orNone, orNotFound, orUnavailable } from '../answer.ts';
import { inspected, isCurrent } from '../attached.ts';
import { bytesOfDigest } from '../bytes-of-digest.ts';
import { HttpProblem } from '../problem.ts';
import type { Call, Operation } from '../route.ts';
import { AttachmentAnswer } from '../schemas.ts';

// Files are uploaded apart from the record, under their digest: the record stays small and complete. Pages, size and
// refusal of a file are found once, on upload, and are facts for the release check. A release copies its files to
// the sealed ones before it commits, so that clearing uploads later cannot reach a sealed pack.

const answered = (description: string) => ({ description, content: { 'application/json': AttachmentAnswer } });

export const putAttachment: Operation = {
  id: 'putAttachment',
  summary: 'Upload a photograph or document under its SHA-256',
  description:
    'JPEG, PNG or PDF, detected from the content, not the name. A record then names it under attachments. Uploading the same file again changes nothing.',
  body: { type: 'application/octet-stream', description: 'The file', schema: 'binary' },
  answers: { 201: answered('Kept'), 200: answered('Kept before') },
  problems: ['body-too-large', 'attachment-refused', 'digest-differs'],
  async handle(call) {
    const name = { workshop: call.caller.workshop, sha256: digestOf(call) };
    // Read before any response: a connection with half a body in it breaks for the request after this one.
    const bytes = await bytesOfDigest(call.request, name.sha256, LIMITS.annexBytes);
    const known = orNone(await call.world.archive.attachmentFact(name));
    if (known?.ok && isCurrent(call, known) && (await isWhole(call, name))) return json(answerOf(name, known));
    const fact = await inspected(call, bytes);
    // An accepted file is kept, even if it would be refused now.
    if (fact.ok || !known?.ok) orUnavailable(await call.world.archive.putAttachment(name, fact, bytes));
    if (!fact.ok)
      throw new HttpProblem(
        'attachment-refused',
        `The file cannot go into a pack: ${inEnglish(saidFault(fact.detail))}`,
      );
    return json(answerOf(name, fact), 201, { Location: call.url.pathname });
  },
};

/** Returns the response with the facts of a file: faults in English. */
function answerOf({ sha256: digest }: AttachmentName, fact: AttachmentFact): object {
  if (!fact.ok) return { sha256: digest, ...fact, detail: inEnglish(saidFault(fact.detail)) };
  if (fact.kind !== 'pdf') return { sha256: digest, ...fact };
  return { sha256: digest, ...fact, obstacles: fact.obstacles.map((fault) => inEnglish(saidFault(fault))) };
}

/** Whether the stored file is intact; if not, the upload replaces it. */
async function isWhole({ world }: Call, name: AttachmentName): Promise<boolean> {
  const kept = await world.archive.attachment(name);
  return kept.ok && kept.value !== null;
}

export const getAttachment: Operation = {
  id: 'getAttachment',
  summary: 'Facts about an uploaded file',
  answers: { 200: answered('Result of its inspection') },
  async handle(call) {
    const name = { workshop: call.caller.workshop, sha256: digestOf(call) };
    const fact = orNotFound(orUnavailable(await call.world.archive.attachmentFact(name)), 'such attachment');
    return json(answerOf(name, fact));
  },
};

export const getAttachmentFile: Operation = {
  id: 'getAttachmentFile',
  summary: 'An uploaded file, as received',
  answers: { 200: { description: 'The file', content: { 'application/octet-stream': 'binary' } } },
  async handle(call) {
    const name = { workshop: call.caller.workshop, sha256: digestOf(call) };
    const fact = orUnavailable(await call.world.archive.attachmentFact(name));
    const bytes = fact?.ok ? orUnavailable(await call.world.archive.attachment(name)) : null;
    return originalFile(orNotFound(bytes, 'such attachment'));
  },
};

/** Returns a file as received, only to be saved: its content is not trusted. */
export function originalFile(body: Uint8Array): Response {
  const headers = {
    'Content-Type': 'application/octet-stream',
    'Content-Disposition': 'attachment',
    'Cache-Control': 'private, no-store',
  };
  return new Response(body as Uint8Array<ArrayBuffer>, { headers });
}

export function digestOf({ params }: Call): string {
  const { sha256: digest = '' } = params;
  if (SHA256.test(digest)) return digest;
  throw new HttpProblem(
    'malformed-request',
    'An attachment is named by its SHA-256 in 64 lower-case hexadecimal digits',
  );
}
