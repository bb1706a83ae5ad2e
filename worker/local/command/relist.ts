import { everyItem, ifThere } from '../../client/client.ts';
import { command, UsageError } from './command.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

export const relist = command({
  forms: [''],
  options: SERVICE_OPTIONS,
  exits: {
    0: 'every pack is told to the list again',
    1: 'refused or broken off: it may be repeated',
    2: 'not understood',
    3: 'the service cannot be reached',
  },
  failures: { failed: 1, notUnderstood: 2 },
  async run(positionals, values, output) {
    if (positionals.length > 0) throw new UsageError(`Nothing is named without an option: ${positionals[0]} is`);
    const client = clientFrom(values, output);
    let [aircraft, packs, mended] = [0, 0, 0];
    for await (const { registration } of everyItem(client.listAircraft, {})) {
      output.progress(`Relisting ${registration}`);
      const told = await ifThere(client.relistAircraft({ registration }));
      aircraft += told ? 1 : 0;
      packs += told?.body.packs ?? 0;
      mended += told?.body.mended ?? 0;
    }
    output.say(`${packs} packs of ${aircraft} aircraft are put into the list again`);
    if (mended > 0) output.say(`${mended} ways and rows were lost or damaged, and were made anew`);
    output.result({ aircraft, packs, mended });
    return 0;
  },
});
