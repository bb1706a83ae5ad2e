import * as z from 'zod';
import { type ArchiveFacts, type Assessed, type AttachedFiles, assess } from '../../core/core.ts';
import { Person } from '../../edge/http/schemas.ts';
import { filesIn, type InspectedFiles } from '../service/files-in.ts';
import { UsageError } from './command.ts';
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

interface AssessOptions {
  /** Folder with files, found by their digests. */
  attachments?: string | undefined;
  /** File with the response of `…/next`, for a record that builds on it. */
  next?: string | undefined;
}

export async function assessedFile(
  file: string,
  { attachments, next }: AssessOptions,
  at: string,
): Promise<AssessedFile> {
  const record = readRecordFile(file);
  if (record.defects.length > 0)
    return { record, assessed: undefined, findings: placed(record.defects, record), files: {} };
  const { files, facts } = attachments === undefined ? NO_FILES : await filesIn(attachments);
  const known = next === undefined ? {} : knownFrom(next);
  const outcome = await assess(record.value, at, { attachments: facts, ...known });
  if (!outcome.ok) return { record, assessed: undefined, findings: placed(outcome.issues, record), files: {} };
  const { assessed } = outcome;
  return { record, assessed, findings: placed(assessed.findings, record), files: fitFiles(files, assessed) };
}

const Next = z.object({
  pack: z.string(),
  record: z.object({ standing: z.object({ sha256: z.string() }) }),
  sections: z.looseObject({}),
  open: z.array(z.looseObject({})),
  readings: z.looseObject({}),
  people: z.array(Person),
});

/**
 * Reads what a record may leave out from the response of `…/next`.
 *
 * @throws UsageError if the file is another one
 */
function knownFrom(file: string): Pick<ArchiveFacts, 'standing' | 'people'> {
  const read = Next.safeParse(readRecordFile(file).value);
  if (!read.success) throw new UsageError(`${file} must be a response of GET /v1/aircraft/{registration}/next`);
  const { pack, record, sections, open, readings, people } = read.data;
  return { standing: { pack, sha256: record.standing.sha256, sections, open, readings }, people };
}

function fitFiles(files: AttachedFiles, { attachments, record }: Assessed): AttachedFiles {
  const named = new Set((record.attachments ?? []).map(({ sha256 }) => sha256));
  return Object.fromEntries(Object.entries(files).filter(([sha256]) => named.has(sha256) && attachments[sha256]?.ok));
}
