import type { ArchiveFacts, Assessed, AttachmentFact } from '../../core/core.ts';
import { SHA256 } from '../../core/patterns.ts';
import type { AttachmentName } from '../archive/archive.ts';
import { orNone, orUnavailable } from './answer.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

/** The schema allows fewer: a record with more is refused by it. */
const MAX_ASKED = 100;

/**
 * What is known of the files that a record names.
 *
 * @param value the record, not yet read: of any shape
 */
export async function attachmentFacts(call: Call, value: unknown): Promise<NonNullable<ArchiveFacts['attachments']>> {
  const known = await Promise.all(
    digestsIn(value).map(async (sha256) => {
      const name = { workshop: call.caller.workshop, sha256 };
      return { name, fact: orNone(await call.world.archive.attachmentFact(name)) };
    }),
  );
  const facts: Record<string, AttachmentFact> = {};
  // What is damaged counts as not handed in: to hand it in again is what heals it.
  // One after another: what an earlier inspection let pass has to be held to be looked into.
  for (const { name, fact } of known) {
    const current = isCurrent(call, fact) ? fact : await lookedIntoAgain(call, name);
    if (current) facts[name.sha256] = current;
  }
  return facts;
}

/** Whether a file was refused, or let pass by the inspection of now: what an earlier one let pass, a release might trip over. */
export function isCurrent({ pipeline }: Call, fact: AttachmentFact | null): boolean {
  return !fact?.ok || fact.inspection === pipeline.INSPECTION;
}

/** What looking into a file gives. */
export async function inspected({ pipeline }: Call, bytes: Uint8Array): Promise<AttachmentFact> {
  const found = await pipeline.inspectAttachment(bytes);
  return found.ok ? { ...found, bytes: bytes.length, inspection: pipeline.INSPECTION } : found;
}

/** The file is kept whatever comes of it: it was taken once, and whoever handed it in may want it back. */
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
 * The files that go into a pack, by digest: those that the assessment found fit for it.
 *
 * @throws Refusal 409 when one was cleared away since the assessment
 */
export async function attachedFiles(call: Call, { attachments }: Assessed): Promise<Record<string, Uint8Array>> {
  const files: Record<string, Uint8Array> = {};
  const wanted = Object.entries(attachments).filter(([, fact]) => fact.ok);
  await Promise.all(
    wanted.map(async ([sha256]) => {
      const bytes = orUnavailable(await call.world.archive.attachment({ workshop: call.caller.workshop, sha256 }));
      if (!bytes) throw new HttpProblem('conflict', `The file ${sha256} was cleared away meanwhile: hand it in again`);
      files[sha256] = bytes;
    }),
  );
  return files;
}
