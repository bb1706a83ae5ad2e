import { importFolder } from '../backup/import-folder.ts';
import { command } from './command.ts';
import { onlyOne } from './only-one.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** Exit codes. */
const EXIT = { imported: 0, failed: 1, notUnderstood: 2 } as const;

export const importArchive = command({
  forms: ['DIR     the key needs all scopes except release, like the first key of a workshop'],
  options: SERVICE_OPTIONS,
  exits: { 0: 'imported', 1: 'refused or interrupted', 2: 'command line not understood', 3: 'service not reached' },
  failures: EXIT,
  async run(positionals, values, output) {
    const folder = onlyOne(positionals, 'folder');
    const imported = await importFolder(clientFrom(values, output), folder, output.progress);
    output.result(imported);
    for (const remark of imported.people) output.say(remark);
    if (imported.people.length > 0)
      output.say('No seal covers the people: compare the two tables, and correct the wrong one.');
    for (const { registration, packs, isNew, isRefused, remarks } of imported.aircraft) {
      if (!isRefused) output.say(`${registration}: ${packs} packs ${isNew ? 'imported' : 'already there'}`);
      for (const remark of remarks) output.say(`  ${remark}`);
    }
    if (imported.aircraft.some(({ isRefused }) => isRefused)) {
      output.say('Import incomplete.');
      return EXIT.failed;
    }
    output.say('Digests and chains match the folder, and every pack is listed.');
    output.say('Links are not imported: they belong to the old address. Make new ones for the owners.');
    return EXIT.imported;
  },
});
