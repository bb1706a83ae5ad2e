import { existsSync, writeFileSync } from 'node:fs';
import { EXAMPLE_VISITS, exampleVisit, withRegistration } from '../service/example-visit.ts';
import { command, FileError, UsageError } from './command.ts';
import { onlyOne } from './only-one.ts';

export const example = command({
  forms: [`${EXAMPLE_VISITS.join('|')} [--registration MARK] [--out RECORD.json]`],
  options: {
    registration: { type: 'string', value: 'MARK', help: 'the aircraft; as invented where it is not given' },
    out: { type: 'string', value: 'FILE', help: 'where it is written; a file that is there stays. Else it is printed' },
  },
  exits: { 0: 'written', 2: 'the file is there already, or cannot be written' },
  failures: { notUnderstood: 2, failed: 2 },
  async run(positionals, { registration, out }, output) {
    const name = onlyOne(positionals, 'An example');
    if (!EXAMPLE_VISITS.includes(name)) {
      throw new UsageError(`There is no example ${name}: it is one of ${EXAMPLE_VISITS.join(', ')}`);
    }
    if (out !== undefined && existsSync(out)) throw new FileError(`Cannot write ${out}: it is there already`);
    const invented = exampleVisit(name, new Date());
    const record = registration === undefined ? invented : withRegistration(invented, registration.toUpperCase());
    const text = `${JSON.stringify(record, null, 2)}\n`;
    if (out === undefined) output.file(text);
    else writeFileSync(out, text);
    if (out !== undefined) output.result({ file: out });
    return 0;
  },
});
