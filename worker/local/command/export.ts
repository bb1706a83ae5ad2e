import { exportFolder } from '../backup/export-folder.ts';
import { command, UsageError } from './command.ts';
import { none } from './only-one.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** Exit codes. */
const EXIT = { exported: 0, failed: 1, notUnderstood: 2 } as const;

export const exportArchive = command({
  forms: ['--out DIR [--aircraft REGISTRATION]'],
  options: {
    out: { type: 'string', value: 'DIR', help: 'new or empty folder' },
    aircraft: { type: 'string', value: 'REGISTRATION', help: 'one aircraft (default: all)' },
    ...SERVICE_OPTIONS,
  },
  exits: {
    0: 'exported',
    1: 'refused or interrupted, or damaged files left out',
    2: 'command line not understood',
    3: 'service not reached',
  },
  failures: EXIT,
  async run(positionals, values, output) {
    none(positionals);
    if (values.out === undefined) throw new UsageError('--out is missing');
    const only = values.aircraft?.toUpperCase();
    const exported = await exportFolder(clientFrom(values, output), values.out, { only, onProgress: output.progress });
    const { workshop, aircraft, files } = exported;
    output.result({ ...exported, out: values.out });
    output.say(`Exported ${aircraft.length} aircraft of ${workshop} in ${files} files: ${values.out}/index.html`);
    output.say('It contains names, licence numbers and original photographs: protect it like the records.');
    for (const what of exported.damaged) output.say(`DAMAGED: ${what}`);
    if (exported.damaged.length === 0) return EXIT.exported;
    output.say('The rest is exported. Restore damaged files with slipmark import of an older export.');
    return EXIT.failed;
  },
});
