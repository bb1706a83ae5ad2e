import { basename } from 'node:path';
import * as z from 'zod';
import { type KeptVisit, type Pack, type Slipmark, SlipmarkProblem, type VisitRecord } from '../../client/client.ts';
import { PACK_NAME } from '../../core/patterns.ts';
import { type ReadRecord, readRecord } from '../../core/record/read-record.ts';
import { command, UsageError } from './command.ts';
import type { Finding } from './finding.ts';
import { countLine, placed, sayFindings } from './findings.ts';
import { onlyOne } from './only-one.ts';
import type { Output } from './output.ts';
import { ANY_RECORD, postRecord, uploadFiles, type VisitName } from './post-record.ts';
import { type RecordFile, readRecordFile } from './record-file.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** Exit codes. */
const EXIT = { done: 0, failed: 1, notUnderstood: 2 } as const;

export const post = command({
  forms: ['RECORD.json [--visit NAME] [--attachments DIR]', 'RECORD.json --release-as PERSON --knows-of-no-hazard'],
  options: {
    visit: { type: 'string', value: 'NAME', help: 'name of the visit (default: name of the file)' },
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    replace: {
      type: 'string',
      value: 'DIGEST',
      alias: 'over',
      help: `digest of the record to replace; ${ANY_RECORD}: any record`,
    },
    'release-as': {
      type: 'string',
      value: 'PERSON',
      help: 'release in the name of this person; make a link for the owner',
    },
    'knows-of-no-hazard': { type: 'boolean', help: 'statement of that person: no known condition endangers flight' },
    ...SERVICE_OPTIONS,
  },
  exits: {
    0: 'stored, and nothing blocks the release; released if requested',
    1: 'findings or open cautions remain, or service refuses; a release is printed if made',
    2: 'record or command line not readable, or record does not fit its schema',
    3: 'service not reached',
  },
  failures: EXIT,
  async run(positionals, values, output) {
    const record = readRecordFile(onlyOne(positionals, 'record'));
    const by = values['release-as'];
    if (by !== undefined && !values['knows-of-no-hazard'])
      throw new UsageError('--release-as needs --knows-of-no-hazard: no release without that statement');
    const client = clientFrom(values, output);
    const read = readRecord(record.value);
    const issues = [...record.defects, ...issuesIn(record, read)];
    if (issues.length > 0) return refuse(issues, record, output);
    const visit = values.visit ?? nameOf(record.file);
    try {
      return await postAndSay(client, { record, named: namedIn(record.value), visit, by, ...values }, output);
    } catch (error) {
      if (error instanceof SlipmarkProblem && error.findings.length > 0)
        return refuse(error.findings, record, output, error);
      throw error;
    }
  },
});

/**
 * Findings of the schema; none if the JSON itself could not be parsed. What a record leaves out, the service knows: the
 * standing file, and the people of the workshop.
 */
function issuesIn({ value }: RecordFile, read: ReadRecord): readonly Finding[] {
  if (read.ok || value === undefined) return [];
  return read.issues.filter(({ code, pointer }) => code !== 'STANDING_FILE_UNKNOWN' && pointer !== '/people');
}

/** What a record names: its aircraft, and its files. */
interface Named {
  registration: string;
  attachments: readonly { sha256: string; title: string }[];
}

const NamedParts = z.object({
  standing: z.object({ pack: z.string() }).optional(),
  aircraft: z.object({ registration: z.string() }).optional().catch(undefined),
  attachments: z.array(z.object({ sha256: z.string(), title: z.string() })).default([]),
});

/**
 * Returns what a record names; its aircraft is that of its standing file, unless it has other marks since.
 *
 * @throws UsageError if it names no aircraft
 */
function namedIn(value: unknown): Named {
  const { standing, aircraft, attachments } = NamedParts.parse(value);
  const registration = aircraft?.registration ?? PACK_NAME.exec(standing?.pack ?? '')?.[1];
  if (registration === undefined) throw new UsageError('The record names neither an aircraft nor a pack');
  return { registration, attachments };
}

interface ToPost {
  /** Of any version: it is posted as it is. */
  record: RecordFile;
  named: Named;
  visit: string;
  attachments?: string;
  replace?: string;
  /** Person who releases; undefined for no release. */
  by: string | undefined;
}

async function postAndSay(
  client: Slipmark,
  { record, named, visit, attachments, replace, by }: ToPost,
  output: Output,
): Promise<number> {
  const body = record.value as VisitRecord;
  const name = { registration: named.registration, visit };
  const lacking = await uploadFiles(client, named, attachments, output);
  for (const { title, why } of lacking) output.say(`“${title}” missing in the service: ${why}`);
  output.progress(`Storing the record as visit ${visit} of ${name.registration}`);
  const posted = await postRecord(client, name, body, replace);
  if (posted.kind === 'stands-there') return standsThere(name, posted.digest, output);
  const { kept } = posted;
  const findings = placed(kept.findings, record);
  sayFindings(findings, record, output);
  output.say(countLine(findings));
  const isToRelease = by !== undefined && kept.isReleasable;
  const released = isToRelease ? await release(client, name, { by, kept }, output) : undefined;
  output.result({ ...kept, findings, lacking, released });
  const isDone = kept.isReleasable && (released === undefined || released.link !== undefined);
  return isDone ? EXIT.done : EXIT.failed;
}

/** Prints the findings for which the record was refused. */
function refuse(findings: readonly Finding[], record: RecordFile, output: Output, problem?: SlipmarkProblem): number {
  const there = placed(findings, record);
  sayFindings(there, record, output);
  output.result({
    error: { status: problem?.status, title: problem?.title, detail: problem?.detail, findings: there },
  });
  return problem?.status === 409 ? EXIT.failed : EXIT.notUnderstood;
}

function standsThere({ registration, visit }: VisitName, digest: string, output: Output): number {
  output.complain(
    `Visit ${visit} of ${registration} has another record already: ${digest}.`,
    `Read it first. Then --replace ${digest} replaces that record, --replace ${ANY_RECORD} any record.`,
  );
  output.result({ error: { message: 'The visit has another record already', digest } });
  return EXIT.failed;
}

/** Releases over the assessment that was printed, and makes a link for the owner. */
async function release(
  client: Slipmark,
  name: VisitName,
  { by, kept }: { by: string; kept: KeptVisit },
  output: Output,
): Promise<{ pack: Pack; link: string | undefined }> {
  output.progress('Releasing');
  // Releases the printed assessment: an amendment in between makes the release fail.
  const ifMatch = `"${kept.assessmentSha256}"`;
  const { body: pack } = await client.releaseVisit({ ...name, ifMatch, body: { by, knowsOfNoHazard: true } });
  // Printed before anything else can fail: the aircraft is released from here on.
  output.say(`Released: ${pack.pack}, by ${pack.releasedBy}`);
  try {
    const { body: link } = await client.makeLink({ pack: pack.pack, body: { audience: 'owner' } });
    output.say(`Owner’s link (shown once): ${link.url}`);
    return { pack, link: link.url };
  } catch (error) {
    if (!(error instanceof SlipmarkProblem)) throw error;
    output.complain(`${pack.pack} is released, but its link for the owner failed: ${error.message}`);
    return { pack, link: undefined };
  }
}

/** Name of a visit from that of a file: letters, digits, dot, hyphen and underscore. */
const nameOf = (file: string): string =>
  basename(file, '.json')
    .replaceAll(/[^A-Za-z0-9._-]/g, '-')
    .slice(0, 40);
