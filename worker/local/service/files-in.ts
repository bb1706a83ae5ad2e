import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type AttachedFiles, type AttachmentFact, inspectAttachment } from '../../core/core.ts';

/** Files of attachments, with the facts from their inspection, by SHA-256. */
export interface InspectedFiles {
  files: AttachedFiles;
  facts: Readonly<Record<string, AttachmentFact>>;
}

/** Inspects every file in a folder. */
export async function filesIn(folder: string): Promise<InspectedFiles> {
  const files: Record<string, Uint8Array> = {};
  const facts: Record<string, AttachmentFact> = {};
  for (const name of readdirSync(folder).sort()) {
    const bytes = new Uint8Array(readFileSync(join(folder, name)));
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const inspected = await inspectAttachment(bytes);
    files[sha256] = bytes;
    facts[sha256] = inspected.ok ? { ...inspected, bytes: bytes.length } : inspected;
  }
  return { files, facts };
}
