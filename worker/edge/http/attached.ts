import type { ArchiveFacts, Assessed, AttachmentFact } from '../../core/core.ts';
import { SHA256 } from '../../core/patterns.ts';
import type { AttachmentName } from '../archive/archive.ts';
import { orNone, orUnavailable } from './answer.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

/** Max. number of files; the schema allows fewer and refuses a record with more. */
const MAX_ASKED = 100;

/**
 * Returns the facts of the files that a record names.
 *
 * @param value unchecked record, of any shape
 */
export async function attachmentFacts(call: Call, value: unknown): Promise<NonNullable<ArchiveFacts['attachments']>> {
  const known = await Promise.all(
    digestsIn(value).map(async (sha256) => {
      const name = { workshop: call.caller.workshop, sha256 };
      return { name, fact: orNone(await call.world.archive.attachmentFact(name)) };
    }),
  );
  const facts: Record<string, AttachmentFact> = {};
  // Damaged files count as not uploaded: another upload repairs them. One after another: a file that an earlier
  // inspection accepted has to be in memory to be inspected.
  for (const { name, fact } of known) {
    const current = isCurrent(call, fact) ? fact : await lookedIntoAgain(call, name);
    if (current) facts[name.sha256] = current;
  }
  return facts;
}

/**
 * Whether a file was refused, or accepted by the current inspection: one that an earlier inspection accepted might
 * break a release.
 */
export function isCurrent({ pipeline }: Call, fact: AttachmentFact | null): boolean {
  return !fact?.ok || fact.inspection === pipeline.INSPECTION;
}

/** Inspects a file and returns the facts. */
export async function inspected({ pipeline }: Call, bytes: Uint8Array): Promise<AttachmentFact> {
  const found = await pipeline.inspectAttachment(bytes);
  return found.ok ? { ...found, bytes: bytes.length, inspection: pipeline.INSPECTION } : found;
}

/** Inspects a kept file again. It stays in any case: it was accepted once, and its sender may want it back. */
async function lookedIntoAgain(call: Call, name: AttachmentName): Promise<AttachmentFact | null> {
  const bytes = orNone(await call.world.archive.attachment(name));
  if (!bytes) return null;
  const fact = await inspected(call, bytes);
  if (fact.ok) orUnavailable(await call.world.archive.putAttachment(name, fact, bytes));
  return fact;
}

function digestsIn(value: unknown): string[] {
  const attachments = (value as { attachments?: unknown } | null)?.attachments;
  if (!Array.isArray(attachments)) return [];
  const digests = attachments.slice(0, MAX_ASKED).map((entry: { sha256?: unknown } | null) => entry?.sha256);
  return [...new Set(digests.filter((sha256) => typeof sha256 === 'string' && SHA256.test(sha256)))] as string[];
}

/**
 * Returns the files of a pack, by digest: those that the assessment found usable.
 *
 * @throws HttpProblem 409 if a file was cleared since the assessment
 */
export async function attachedFiles(call: Call, { attachments }: Assessed): Promise<Record<string, Uint8Array>> {
  const files: Record<string, Uint8Array> = {};
  const wanted = Object.entries(attachments).filter(([, fact]) => fact.ok);
  await Promise.all(
    wanted.map(async ([sha256]) => {
      const bytes = orUnavailable(await call.world.archive.attachment({ workshop: call.caller.workshop, sha256 }));
      if (!bytes) throw new HttpProblem('conflict', `The file ${sha256} was deleted in the meantime: upload it again`);
      files[sha256] = bytes;
    }),
  );
  return files;
}
