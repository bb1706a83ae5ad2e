import { scrub as scrubArchive } from '../backup/scrub.ts';
import { command } from './command.ts';
import { none } from './only-one.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** Exit codes. */
const EXIT = { whole: 0, damaged: 1, notUnderstood: 2 } as const;

export const scrub = command({
  forms: [''],
  options: SERVICE_OPTIONS,
  exits: {
    0: 'no damage',
    1: 'damaged or missing data found, or check interrupted',
    2: 'command line not understood',
    3: 'service not reached',
  },
  failures: { failed: EXIT.damaged, notUnderstood: EXIT.notUnderstood },
  async run(positionals, values, output) {
    none(positionals);
    const found = await scrubArchive(clientFrom(values, output), output.progress);
    const { aircraft, files, damaged } = found;
    output.result(found);
    output.say(`Read ${files} files of ${aircraft} aircraft, and their chains`);
    for (const what of damaged) output.say(`DAMAGED: ${what}`);
    if (damaged.length === 0) return EXIT.whole;
    output.say('Restore files and ledgers from an export with slipmark import.');
    return EXIT.damaged;
  },
});
