import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as pipeline from '../../core/core.ts';
import { PAPER_CHOICE, PAPER_NAMES, type PaperSize, paperSize } from '../../core/units/paper-size.ts';
import { assessedFile } from './assessed-file.ts';
import { command, UsageError } from './command.ts';
import { countLine, type PlacedFinding, placed, sayFindings } from './findings.ts';
import { onlyOne } from './only-one.ts';
import { timestampFrom } from './timestamp.ts';

/** Exit codes. */
const EXIT = { releasable: 0, blocked: 1, notReadable: 2 } as const;

export const pack = command({
  forms: [`RECORD.json [--out DIR] [--attachments DIR] [--paper ${PAPER_NAMES.join('|')}]`],
  options: {
    out: { type: 'string', value: 'DIR', help: 'output folder (default: out)' },
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    next: { type: 'string', value: 'FILE', help: 'response of …/next, for a record that names a standing file' },
    at: { type: 'string', value: 'TIME', help: 'time to check at, such as 2026-11-05T15:00:00Z (default: now)' },
    draft: { type: 'boolean', help: 'no effect: without a service every pack is a draft' },
    paper: { type: 'string', value: 'PAPER', help: `paper size, ${PAPER_CHOICE} (default: from the record)` },
  },
  exits: {
    0: 'draft written; nothing blocks the release',
    1: 'draft written; findings block the release, or cautions are not accepted yet',
    2: 'record or command line not readable, or record does not fit its schema',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, values, output) {
    const { out = 'out', attachments, next } = values;
    const paper = paperFrom(values.paper);
    const at = timestampFrom(values.at);
    const file = onlyOne(positionals, 'record');
    output.progress(`Assessing ${file}`);
    const { assessed, record, files, findings: unread } = await assessedFile(file, { attachments, next }, at);
    if (!assessed) {
      sayFindings(unread, record, output);
      output.result({ isReadable: false, findings: unread });
      return EXIT.notReadable;
    }
    output.progress('Printing');
    const printed = await pipeline.draftPdf(assessed, at, { files, ...(paper && { paper }) });
    const findings: PlacedFinding[] = placed([...assessed.findings, ...printed.findings], record);
    sayFindings(findings, record, output);
    const { registration } = assessed.record.aircraft;
    const written = save(out, {
      [`${registration}-not-released.pdf`]: printed.bytes,
      [`${registration}-record.json`]: assessed.recordJson,
    });
    for (const path of written) output.say(path);
    output.say(countLine(findings, true));
    const isReleasable = assessed.isReleasable && printed.findings.length === 0;
    output.result({ isReleasable, files: written, findings });
    return isReleasable ? EXIT.releasable : EXIT.blocked;
  },
});

function paperFrom(paper: string | undefined): PaperSize | undefined {
  const known = paperSize(paper);
  if (paper === undefined || known) return known;
  throw new UsageError(`--paper must be ${PAPER_CHOICE}, not ${paper}`);
}

function save(out: string, files: Readonly<Record<string, string | Uint8Array>>): string[] {
  mkdirSync(out, { recursive: true });
  return Object.entries(files).map(([name, content]) => {
    const path = join(out, name);
    writeFileSync(path, content);
    return path;
  });
}
