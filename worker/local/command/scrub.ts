import { scrub as scrubArchive } from '../backup/scrub.ts';
import { command, UsageError } from './command.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** What the process answers with. */
const EXIT = { whole: 0, damaged: 1, notUnderstood: 2 } as const;

export const scrub = command({
  forms: [''],
  options: SERVICE_OPTIONS,
  exits: {
    0: 'everything is as it was kept',
    1: 'something is damaged or missing, or the reading broke off',
    2: 'not understood',
    3: 'the service cannot be reached',
  },
  failures: { failed: EXIT.damaged, notUnderstood: EXIT.notUnderstood },
  async run(positionals, values, output) {
    if (positionals.length > 0) throw new UsageError(`Nothing is named without an option: ${positionals[0]} is`);
    const found = await scrubArchive(clientFrom(values, output), output.progress);
    const { aircraft, files, damaged } = found;
    output.result(found);
    output.say(`Read ${files} files of ${aircraft} aircraft, and their chains`);
    for (const what of damaged) output.say(`DAMAGED: ${what}`);
    if (damaged.length === 0) return EXIT.whole;
    output.say('Bring files and ledgers back from an export with slipmark import.');
    return EXIT.damaged;
  },
});
