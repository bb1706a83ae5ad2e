import { importFolder } from '../backup/import-folder.ts';
import { command } from './command.ts';
import { onlyOne } from './only-one.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** What the process answers with. */
const EXIT = { imported: 0, failed: 1, notUnderstood: 2 } as const;

export const importArchive = command({
  forms: ['DIR     the key needs every scope but release, as the first key of a workshop has'],
  options: SERVICE_OPTIONS,
  exits: { 0: 'imported', 1: 'refused or broken off', 2: 'not understood', 3: 'the service cannot be reached' },
  failures: EXIT,
  async run(positionals, values, output) {
    const folder = onlyOne(positionals, 'A folder');
    const imported = await importFolder(clientFrom(values, output), folder, output.progress);
    output.result(imported);
    for (const remark of imported.people) output.say(remark);
    if (imported.people.length > 0)
      output.say('No seal proves people: compare the two tables, and enter yourself who is right.');
    for (const { registration, packs, isNew, isRefused, remarks } of imported.aircraft) {
      if (!isRefused) output.say(`${registration}: ${packs} packs ${isNew ? 'imported' : 'stood there already'}`);
      for (const remark of remarks) output.say(`  ${remark}`);
    }
    if (imported.aircraft.some(({ isRefused }) => isRefused)) {
      output.say('Not everything could be imported.');
      return EXIT.failed;
    }
    output.say('Digests and chains are those of the folder, and every pack is known there.');
    output.say('Links were not brought along: they belong to the old address. Make new ones where owners need them.');
    return EXIT.imported;
  },
});
