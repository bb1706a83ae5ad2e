import { assessmentAnswer } from '../../core/core.ts';
import { assessedFile } from './assessed-file.ts';
import { command } from './command.ts';
import { countLine, sayFindings } from './findings.ts';
import { momentFrom } from './moment.ts';
import { onlyOne } from './only-one.ts';

/** What the process answers with. */
const EXIT = { releasable: 0, blocked: 1, notReadable: 2 } as const;

export const assess = command({
  forms: ['RECORD.json [--attachments DIR]', '-            the record from standard input'],
  options: {
    attachments: { type: 'string', value: 'DIR', help: 'folder with the files that the record names' },
    at: { type: 'string', value: 'MOMENT', help: 'as if it were 2026-11-05T15:00:00Z; now where it is not given' },
  },
  exits: {
    0: 'nothing stands against the release',
    1: 'findings stand against it',
    2: 'the record cannot be read, or does not fit its schema',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, { attachments, at }, output) {
    const file = onlyOne(positionals, 'A record');
    const { record, assessed, findings } = await assessedFile(file, attachments, momentFrom(at));
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
