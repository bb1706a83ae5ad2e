import { existsSync, writeFileSync } from 'node:fs';
import { EXAMPLE_VISITS, exampleVisit, withRegistration } from '../service/example-visit.ts';
import { command, FileError, UsageError } from './command.ts';
import { onlyOne } from './only-one.ts';

export const example = command({
  forms: [`${EXAMPLE_VISITS.join('|')} [--registration MARK] [--out RECORD.json]`],
  options: {
    registration: { type: 'string', value: 'MARK', help: 'registration of the aircraft (default: from the sample)' },
    out: { type: 'string', value: 'FILE', help: 'output file (default: standard output); never overwrites' },
  },
  exits: { 0: 'written', 2: 'file exists or not writable, or command line not understood' },
  failures: { notUnderstood: 2, failed: 2 },
  async run(positionals, { registration, out }, output) {
    const name = onlyOne(positionals, 'name of a sample');
    if (!EXAMPLE_VISITS.includes(name)) {
      throw new UsageError(`Unknown sample ${name}. Samples: ${EXAMPLE_VISITS.join(', ')}`);
    }
    if (out !== undefined && existsSync(out)) throw new FileError(`Cannot write ${out}: it exists already`);
    const invented = exampleVisit(name, new Date());
    const record = registration === undefined ? invented : withRegistration(invented, registration.toUpperCase());
    const text = `${JSON.stringify(record, null, 2)}\n`;
    if (out === undefined) output.file(text);
    else writeFileSync(out, text);
    if (out !== undefined) output.result({ file: out });
    return 0;
  },
});
