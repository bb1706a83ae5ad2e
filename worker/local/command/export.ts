import { exportFolder } from '../backup/export-folder.ts';
import { command, UsageError } from './command.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** What the process answers with. */
const EXIT = { exported: 0, failed: 1, notUnderstood: 2 } as const;

export const exportArchive = command({
  forms: ['--out DIR [--aircraft REGISTRATION]'],
  options: {
    out: { type: 'string', value: 'DIR', help: 'a new folder, or an empty one' },
    aircraft: { type: 'string', value: 'REGISTRATION', help: 'one aircraft; all of them where it is not given' },
    ...SERVICE_OPTIONS,
  },
  exits: {
    0: 'exported',
    1: 'refused, broken off, or without what is damaged in the service',
    2: 'not understood',
    3: 'the service cannot be reached',
  },
  failures: EXIT,
  async run(positionals, values, output) {
    if (positionals.length > 0) throw new UsageError(`Nothing is named without an option: ${positionals[0]} is`);
    if (values.out === undefined) throw new UsageError('--out must be given');
    const only = values.aircraft?.toUpperCase();
    const exported = await exportFolder(clientFrom(values, output), values.out, { only, onProgress: output.progress });
    const { workshop, aircraft, files } = exported;
    output.result({ ...exported, out: values.out });
    output.say(`Exported ${aircraft.length} aircraft of ${workshop} in ${files} files: ${values.out}/index.html`);
    output.say('It holds names, licence numbers and original photographs: keep it as you keep the records themselves.');
    for (const what of exported.damaged) output.say(`DAMAGED: ${what}`);
    if (exported.damaged.length === 0) return EXIT.exported;
    output.say('The rest is exported. Bring what is damaged back with slipmark import of an older export.');
    return EXIT.failed;
  },
});
