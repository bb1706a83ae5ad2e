// npm run pack -- fixtures/visits/NAME.json --out DIR: a pack without a server, from the same core.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import * as pipeline from '../pipeline.ts';
import { filesIn, type InspectedFiles } from './files-in.ts';

const USAGE =
  'Usage: npm run pack -- VISIT.json --out DIR [--attachments DIR] [--at 2026-11-05T15:00:00Z] [--draft [--paper A4|Letter]]';

/** What the process answers with. */
const EXIT = { released: 0, blocked: 1, notReadable: 2 } as const;

interface Request {
  file: string;
  out: string;
  /** Folder with the files of attachments; they are known by their digests. */
  attachments: string | undefined;
  /** Paper of a draft; a released pack is printed on what its record says. */
  paper: 'A4' | 'Letter' | undefined;
  isDraft: boolean;
  at: string;
}

function requestFrom(args: string[]): Request | undefined {
  const options = {
    out: { type: 'string', default: 'out' },
    attachments: { type: 'string' },
    paper: { type: 'string' },
    draft: { type: 'boolean', default: false },
    at: { type: 'string' },
  } as const;
  const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
  const [file] = positionals;
  const paper = (['A4', 'Letter'] as const).find((name) => name === values.paper);
  const at = new Date(values.at ?? Date.now());
  const isPaperKnown = values.paper === undefined || (paper !== undefined && values.draft);
  if (!file || positionals.length > 1 || !isPaperKnown || Number.isNaN(at.getTime())) return undefined;
  const { out, attachments, draft: isDraft } = values;
  return { file, out, attachments, paper, isDraft, at: at.toISOString() };
}

const NO_FILES: InspectedFiles = { files: {}, facts: {} };

/** The files that go into the pack: those that the record names and that can. */
function fitFiles(files: pipeline.AttachedFiles, { attachments, record }: pipeline.Assessed): pipeline.AttachedFiles {
  const named = new Set((record.attachments ?? []).map(({ sha256 }) => sha256));
  return Object.fromEntries(Object.entries(files).filter(([sha256]) => named.has(sha256) && attachments[sha256]?.ok));
}

interface Said {
  severity: string;
  code: string;
  pointer: string;
  sentence: string;
  remedy: string;
}

function say(findings: readonly Said[]): void {
  for (const { severity, code, pointer, sentence, remedy } of findings)
    console.log(`${severity.padEnd(8)}${code}  ${pointer}\n        ${sentence}\n        ${remedy}`);
}

function save(out: string, name: string, content: string | Uint8Array): void {
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, name), content);
  console.log(join(out, name));
}

async function pack({ file, out, attachments, paper, isDraft, at }: Request): Promise<number> {
  const { files, facts } = attachments === undefined ? NO_FILES : await filesIn(attachments);
  const outcome = await pipeline.assess(JSON.parse(readFileSync(file, 'utf8')), at, { attachments: facts });
  if (!outcome.ok) {
    say(outcome.issues);
    return EXIT.notReadable;
  }
  const { assessed } = outcome;
  const { registration } = assessed.record.aircraft;
  const wanted = fitFiles(files, assessed);
  if (isDraft) {
    const { bytes, findings } = await pipeline.draftPdf(assessed, at, { files: wanted, ...(paper && { paper }) });
    say([...assessed.findings, ...findings]);
    save(out, `${registration}-not-released.pdf`, bytes);
    return assessed.isReleasable ? EXIT.released : EXIT.blocked;
  }
  const by = assessed.record.release?.by ?? '';
  const attestation = { by, read: assessed.assessmentSha256, knowsOfNoHazard: true, at };
  const place = { pack: `${registration}-P1-1`, number: 1, issue: 1, visit: 'offline' };
  const sealing = await pipeline.seal(assessed, attestation, place, wanted);
  say(sealing.ok ? assessed.findings : sealing.findings);
  if (!sealing.ok) return EXIT.blocked;
  const { pdf, recordJson, manifestJson } = sealing.sealed;
  save(out, `${place.pack}-release-pack.pdf`, pdf);
  save(out, `${place.pack}-record.json`, recordJson);
  save(out, `${place.pack}-manifest.json`, manifestJson);
  return EXIT.released;
}

try {
  const request = requestFrom(process.argv.slice(2));
  if (!request) throw new Error(USAGE);
  process.exitCode = await pack(request);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = EXIT.notReadable;
}
