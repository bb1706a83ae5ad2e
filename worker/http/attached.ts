import type { ArchiveFacts, Assessed, AttachmentFact } from '../pipeline.ts';
import { reached } from './answer.ts';
import { Refusal } from './problem.ts';
import type { Call } from './route.ts';

const DIGEST = /^[0-9a-f]{64}$/;
/** The schema allows fewer: a record with more is refused by it. */
const MOST_ASKED = 100;

/**
 * What is known of the files that a record names.
 *
 * @param value the record, not yet read: of any shape
 */
export async function attachmentFacts(call: Call, value: unknown): Promise<NonNullable<ArchiveFacts['attachments']>> {
  const facts: Record<string, AttachmentFact> = {};
  const asked = digestsIn(value).map(async (sha256) => {
    const fact = reached(await call.world.archive.attachmentFact({ workshop: call.caller.workshop, sha256 }));
    if (fact) facts[sha256] = fact;
  });
  await Promise.all(asked);
  return facts;
}

function digestsIn(value: unknown): string[] {
  const attachments = (value as { attachments?: unknown } | null)?.attachments;
  if (!Array.isArray(attachments)) return [];
  const digests = attachments.slice(0, MOST_ASKED).map((entry: { sha256?: unknown } | null) => entry?.sha256);
  return [...new Set(digests.filter((sha256) => typeof sha256 === 'string' && DIGEST.test(sha256)))] as string[];
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
      const bytes = reached(await call.world.archive.attachment({ workshop: call.caller.workshop, sha256 }));
      if (!bytes) throw new Refusal('conflict', `The file ${sha256} was cleared away meanwhile: hand it in again`);
      files[sha256] = bytes;
    }),
  );
  return files;
}
