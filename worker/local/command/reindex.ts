import { everyItem, ifThere } from '../../client/client.ts';
import { command } from './command.ts';
import { none } from './only-one.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

export const reindex = command({
  forms: [''],
  options: SERVICE_OPTIONS,
  exits: {
    0: 'every pack is in the list again',
    1: 'refused or interrupted; run it again',
    2: 'command line not understood',
    3: 'service not reached',
  },
  failures: { failed: 1, notUnderstood: 2 },
  async run(positionals, values, output) {
    none(positionals);
    const client = clientFrom(values, output);
    let [aircraft, packs, mended] = [0, 0, 0];
    for await (const { registration } of everyItem(client.listAircraft, {})) {
      output.progress(`Listing the packs of ${registration}`);
      const listed = await ifThere(client.relistAircraft({ registration }));
      aircraft += listed ? 1 : 0;
      packs += listed?.body.packs ?? 0;
      mended += listed?.body.mended ?? 0;
    }
    output.say(`Listed ${packs} packs of ${aircraft} aircraft`);
    if (mended > 0) output.say(`Restored ${mended} lost or damaged entries`);
    output.result({ aircraft, packs, mended });
    return 0;
  },
});
