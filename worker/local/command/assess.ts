import { assessmentAnswer } from '../../core/core.ts';
import { assessedFile } from './assessed-file.ts';
import { command } from './command.ts';
import { countLine, sayFindings } from './findings.ts';
import { onlyOne } from './only-one.ts';
import { timestampFrom } from './timestamp.ts';

/** Exit codes. */
const EXIT = { releasable: 0, blocked: 1, notReadable: 2 } as const;

export const assess = command({
  forms: ['RECORD.json [--attachments DIR] [--next FILE]', '-            reads the record from standard input'],
  options: {
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    next: { type: 'string', value: 'FILE', help: 'response of …/next, for a record that names a standing file' },
    at: { type: 'string', value: 'TIME', help: 'time to check at, such as 2026-11-05T15:00:00Z (default: now)' },
  },
  exits: {
    0: 'nothing blocks the release',
    1: 'findings block the release, or cautions are not accepted yet',
    2: 'record or command line not readable, or record does not fit its schema',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, { attachments, next, at }, output) {
    const file = onlyOne(positionals, 'record');
    const { record, assessed, findings } = await assessedFile(file, { attachments, next }, timestampFrom(at));
    sayFindings(findings, record, output);
    if (!assessed) {
      output.result({ isReadable: false, findings });
      return EXIT.notReadable;
    }
    output.result({ ...assessmentAnswer(assessed), findings });
    output.say(countLine(findings, true));
    return assessed.isReleasable ? EXIT.releasable : EXIT.blocked;
  },
});
