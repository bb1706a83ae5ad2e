import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as pipeline from '../../pipeline.ts';
import { sealedOffline } from '../sealed-offline.ts';
import { assessedFile } from './assessed-file.ts';
import { command, UsageError } from './command.ts';
import { type Finding, type PlacedFinding, placed, sayFindings } from './findings.ts';
import { momentFrom } from './moment.ts';
import { onlyOne } from './only-one.ts';

/** What the process answers with. */
const EXIT = { released: 0, blocked: 1, notReadable: 2 } as const;

const PAPERS = ['A4', 'Letter'] as const;
type Paper = (typeof PAPERS)[number];

interface Packed {
  /** Content by name of file. */
  files: Readonly<Record<string, string | Uint8Array>>;
  findings: readonly Finding[];
  code: number;
}

export const pack = command({
  forms: ['RECORD.json --out DIR [--attachments DIR]', 'RECORD.json --draft [--paper A4|Letter]'],
  options: {
    out: { type: 'string', value: 'DIR', help: 'folder for what is written; out where it is not given' },
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    at: { type: 'string', value: 'MOMENT', help: 'as if it were 2026-11-05T15:00:00Z; now where it is not given' },
    draft: { type: 'boolean', help: 'as it stands, marked NOT RELEASED on every page' },
    paper: { type: 'string', value: 'PAPER', help: 'paper of a draft; a pack is printed on what its record says' },
  },
  exits: {
    0: 'written; nothing stands against the release',
    1: 'findings stand against the release: only a draft is written',
    2: 'the record cannot be read, or does not fit its schema',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, values, output) {
    const { out = 'out', attachments, draft = false } = values;
    const paper = paperFrom(values);
    const at = momentFrom(values.at);
    const file = onlyOne(positionals, 'A record');
    output.progress(`Assessing ${file}`);
    const read = await assessedFile(file, attachments, at);
    const { assessed, record, files } = read;
    if (!assessed) {
      sayFindings(read.findings, record, output);
      output.result({ isReadable: false, findings: read.findings });
      return EXIT.notReadable;
    }
    output.progress('Printing');
    const packed = draft ? await drafted(assessed, at, files, paper) : await released(assessed, at, files);
    const findings: PlacedFinding[] = placed(packed.findings, record);
    sayFindings(findings, record, output);
    const written = save(out, packed.files);
    for (const path of written) output.say(path);
    output.result({ isReleasable: packed.code === EXIT.released, files: written, findings });
    return packed.code;
  },
});

function paperFrom({ paper, draft }: { paper?: string; draft?: boolean }): Paper | undefined {
  const known = PAPERS.find((name) => name === paper);
  if (paper === undefined || (known && draft)) return known;
  throw new UsageError(known ? '--paper is for a --draft' : `--paper must be A4 or Letter: it is ${paper}`);
}

async function drafted(
  assessed: pipeline.Assessed,
  at: string,
  files: pipeline.AttachedFiles,
  paper: Paper | undefined,
): Promise<Packed> {
  const { bytes, findings } = await pipeline.draftPdf(assessed, at, { files, ...(paper && { paper }) });
  return {
    files: { [`${assessed.record.aircraft.registration}-not-released.pdf`]: bytes },
    findings: [...assessed.findings, ...findings],
    code: assessed.isReleasable ? EXIT.released : EXIT.blocked,
  };
}

async function released(assessed: pipeline.Assessed, at: string, files: pipeline.AttachedFiles): Promise<Packed> {
  const sealing = await sealedOffline(assessed, at, files);
  if (!sealing.ok) return { files: {}, findings: sealing.findings, code: EXIT.blocked };
  const { pdf, recordJson, manifestJson, summary } = sealing.sealed;
  const name = summary.pack;
  return {
    files: {
      [`${name}-release-pack.pdf`]: pdf,
      [`${name}-record.json`]: recordJson,
      [`${name}-manifest.json`]: manifestJson,
    },
    findings: assessed.findings,
    code: EXIT.released,
  };
}

function save(out: string, files: Packed['files']): string[] {
  mkdirSync(out, { recursive: true });
  return Object.entries(files).map(([name, content]) => {
    const path = join(out, name);
    writeFileSync(path, content);
    return path;
  });
}
