import { type AttachedFiles, type AttachmentFact, inspectAttachment } from '../../core/core.ts';
import { filesByDigest } from '../command/digest-files.ts';

/** Files of attachments, with the facts from their inspection, by SHA-256. */
export interface InspectedFiles {
  files: AttachedFiles;
  facts: Readonly<Record<string, AttachmentFact>>;
}

/**
 * Inspects every file in a folder.
 *
 * @throws FileError if it cannot be read
 */
export async function filesIn(folder: string): Promise<InspectedFiles> {
  const files: Record<string, Uint8Array> = {};
  const facts: Record<string, AttachmentFact> = {};
  for (const [sha256, { bytes }] of filesByDigest(folder)) {
    const inspected = await inspectAttachment(bytes);
    files[sha256] = bytes;
    facts[sha256] = inspected.ok ? { ...inspected, bytes: bytes.length } : inspected;
  }
  return { files, facts };
}
