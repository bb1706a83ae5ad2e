import { type Assessed, type AttachedFiles, assess } from '../../core/core.ts';
import { filesIn, type InspectedFiles } from '../service/files-in.ts';
import { type PlacedFinding, placed } from './findings.ts';
import { type RecordFile, readRecordFile } from './record-file.ts';

/** A record file, assessed on this machine. */
export interface AssessedFile {
  record: RecordFile;
  /** Undefined if the record does not fit its schema. */
  assessed: Assessed | undefined;
  findings: PlacedFinding[];
  /** Files that the record names and that can go into a pack. */
  files: AttachedFiles;
}

const NO_FILES: InspectedFiles = { files: {}, facts: {} };

/** @param attachments folder with files, found by their digests */
export async function assessedFile(file: string, attachments: string | undefined, at: string): Promise<AssessedFile> {
  const record = readRecordFile(file);
  if (record.defects.length > 0)
    return { record, assessed: undefined, findings: placed(record.defects, record), files: {} };
  const { files, facts } = attachments === undefined ? NO_FILES : await filesIn(attachments);
  const outcome = await assess(record.value, at, { attachments: facts });
  if (!outcome.ok) return { record, assessed: undefined, findings: placed(outcome.issues, record), files: {} };
  const { assessed } = outcome;
  return { record, assessed, findings: placed(assessed.findings, record), files: fitFiles(files, assessed) };
}

function fitFiles(files: AttachedFiles, { attachments, record }: Assessed): AttachedFiles {
  const named = new Set((record.attachments ?? []).map(({ sha256 }) => sha256));
  return Object.fromEntries(Object.entries(files).filter(([sha256]) => named.has(sha256) && attachments[sha256]?.ok));
}
