import { basename } from 'node:path';
import { type KeptVisit, type Pack, type Slipmark, SlipmarkProblem, type VisitRecord } from '../../client/client.ts';
import { type ReadRecord, readRecord } from '../../core/record/read-record.ts';
import { command, UsageError } from './command.ts';
import type { Finding } from './finding.ts';
import { countLine, placed, sayFindings } from './findings.ts';
import { onlyOne } from './only-one.ts';
import type { Output } from './output.ts';
import { postRecord, uploadFiles, type VisitName, WHATEVER_IS_KEPT } from './post-record.ts';
import { type RecordFile, readRecordFile } from './record-file.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** What the process answers with. */
const EXIT = { done: 0, failed: 1, notUnderstood: 2 } as const;

export const post = command({
  forms: ['RECORD.json [--visit NAME] [--attachments DIR]', 'RECORD.json --release-as PERSON --knows-of-no-hazard'],
  options: {
    visit: { type: 'string', value: 'NAME', help: 'name of the visit; that of the file where it is not given' },
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    over: {
      type: 'string',
      value: 'DIGEST',
      help: `the kept record that this one replaces; ${WHATEVER_IS_KEPT} for whatever is there`,
    },
    'release-as': {
      type: 'string',
      value: 'PERSON',
      help: 'release in the name of this person of the record, and make a link for the owner',
    },
    'knows-of-no-hazard': { type: 'boolean', help: 'that person states to know of no condition that endangers flight' },
    ...SERVICE_OPTIONS,
  },
  exits: {
    0: 'kept; nothing stands against the release; released, where asked to',
    1: 'findings stand against the release or wait for a decision, or the service refuses; where it was released, that is said',
    2: 'the record cannot be read, or does not fit its schema',
    3: 'the service cannot be reached',
  },
  failures: EXIT,
  async run(positionals, values, output) {
    const record = readRecordFile(onlyOne(positionals, 'A record'));
    const by = values['release-as'];
    if (by !== undefined && !values['knows-of-no-hazard'])
      throw new UsageError('--release-as needs --knows-of-no-hazard: nothing is released without that statement');
    const client = clientFrom(values, output);
    const read = readRecord(record.value);
    if (record.defects.length > 0 || !read.ok)
      return refuse([...record.defects, ...issuesIn(record, read)], record, output);
    const visit = values.visit ?? nameOf(record.file);
    try {
      return await postAndSay(client, { record, visit, by, ...values }, output);
    } catch (error) {
      if (error instanceof SlipmarkProblem && error.findings.length > 0)
        return refuse(error.findings, record, output, error);
      throw error;
    }
  },
});

/** Nothing is said of a record that could not be looked into. */
function issuesIn({ value }: RecordFile, read: ReadRecord): readonly Finding[] {
  return read.ok || value === undefined ? [] : read.issues;
}

interface ToPost {
  record: RecordFile;
  visit: string;
  attachments?: string;
  over?: string;
  /** Who releases; undefined where it is not to be released. */
  by: string | undefined;
}

async function postAndSay(
  client: Slipmark,
  { record, visit, attachments, over, by }: ToPost,
  output: Output,
): Promise<number> {
  const body = record.value as VisitRecord;
  const name = { registration: body.aircraft.registration, visit };
  const lacking = await uploadFiles(client, body, attachments, output);
  for (const { title, why } of lacking) output.say(`“${title}” is not in the service: ${why}`);
  output.progress(`Keeping the record as visit ${visit} of ${name.registration}`);
  const posted = await postRecord(client, name, body, over);
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

/** Says what the record was refused for. */
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
    `Visit ${visit} of ${registration} is kept already, with another record: ${digest}.`,
    `Read it first; then --over ${digest} replaces exactly that one, and --over ${WHATEVER_IS_KEPT} whatever is there.`,
  );
  output.result({ error: { message: 'The visit is kept already, with another record', digest } });
  return EXIT.failed;
}

/** Releases over the assessment that was said, and makes a link for the owner. */
async function release(
  client: Slipmark,
  name: VisitName,
  { by, kept }: { by: string; kept: KeptVisit },
  output: Output,
): Promise<{ pack: Pack; link: string | undefined }> {
  output.progress('Releasing');
  // What is released is what was said above: an amendment that came in between makes it fail.
  const ifMatch = `"${kept.assessmentSha256}"`;
  const { body: pack } = await client.releaseVisit({ ...name, ifMatch, body: { by, knowsOfNoHazard: true } });
  // Said before anything else can fail: the aircraft is released from here on.
  output.say(`Released: ${pack.pack}, by ${pack.releasedBy}`);
  try {
    const { body: link } = await client.makeLink({ pack: pack.pack, body: { audience: 'owner' } });
    output.say(`Owner’s link, told this once: ${link.url}`);
    return { pack, link: link.url };
  } catch (error) {
    if (!(error instanceof SlipmarkProblem)) throw error;
    output.complain(`${pack.pack} is released, but the link for the owner was not made: ${error.message}`);
    return { pack, link: undefined };
  }
}

/** A visit is named by letters, digits, dot, hyphen and underscore. */
const nameOf = (file: string): string =>
  basename(file, '.json')
    .replaceAll(/[^A-Za-z0-9._-]/g, '-')
    .slice(0, 40);
