import { statSync } from 'node:fs';
import { type Verdict, verifyFile } from '../../core/seal/verify.ts';
import { type CheckedFolder, checkFolder } from '../backup/check-folder.ts';
import { command, UsageError } from './command.ts';
import { keySetIn } from './key-set-in.ts';
import { onlyOne } from './only-one.ts';
import type { Output } from './output.ts';
import { bytesOf } from './read-file.ts';

/** Exit codes. */
const EXIT = { genuine: 0, altered: 1, unproved: 2, notReadable: 3 } as const;

export const verify = command({
  forms: ['PACK.pdf --keys KEYS.json', 'DIR --keys KEYS.json        DIR is a folder from slipmark export'],
  options: {
    keys: {
      type: 'string',
      value: 'FILE',
      help: 'published keys, from GET /v1/workshops/{workshop}/keys.json',
    },
  },
  exits: {
    0: 'genuine',
    1: 'changed after sealing',
    2: 'not proven: no seal, or not by these keys',
    3: 'file or command line not readable',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, { keys }, output) {
    const place = onlyOne(positionals, 'pack or folder');
    if (keys === undefined) throw new UsageError('--keys is missing');
    const set = keySetIn(keys);
    const isFolder = statSync(place, { throwIfNoEntry: false })?.isDirectory() ?? false;
    return isFolder
      ? sayFolder(await checkFolder(place, set), output)
      : say(await verifyFile(bytesOf(place), set), output);
  },
});

const EXPLANATIONS: Record<Exclude<Verdict['kind'], 'genuine' | 'altered'>, string> = {
  'not-sealed': 'NOT SEALED: the file has no seal, or its seal is destroyed',
  'key-unknown': 'UNKNOWN KEY: the seal names a key that is not in the set',
  'seal-false': 'WRONG SEAL: not made by the key that it names',
};

function say(verdict: Verdict, output: Output): number {
  output.result(verdict);
  if (verdict.kind !== 'genuine' && verdict.kind !== 'altered') {
    output.say(EXPLANATIONS[verdict.kind]);
    return EXIT.unproved;
  }
  const { pack, workshop, issuedAt, manifestSha256 } = verdict.claims;
  const what = `${pack}, sealed by ${workshop} on ${issuedAt} with key ${verdict.kid}`;
  if (verdict.kind === 'altered') {
    output.say(`ALTERED: ${what}`, `         differs in ${verdict.parts.join('; ')}`);
    return EXIT.altered;
  }
  output.say(`GENUINE: ${what}`, `         manifest ${manifestSha256}`);
  output.say('         Check online whether it is still current.');
  return EXIT.genuine;
}

function sayFolder(checked: CheckedFolder, output: Output): number {
  const { workshop, aircraft, people, defects } = checked;
  output.result(checked);
  if (workshop === undefined) {
    for (const { path, what } of defects) output.say(`NOT READABLE: ${path} ${what}`);
    return EXIT.notReadable;
  }
  for (const { registration, packs, head } of aircraft)
    if (head) output.say(`${registration}: ${packs} packs; the chain ends with entry ${head.seq}, ${head.digest}`);
  for (const { kind, path, what } of defects)
    output.say(`${kind === 'altered' ? 'ALTERED' : 'UNPROVED'}: ${path} ${what}`);
  if (defects.some(({ kind }) => kind === 'altered')) return EXIT.altered;
  if (defects.length > 0) return EXIT.unproved;
  output.say(
    `GENUINE: every pack of ${workshop} in the folder. Newer packs may exist: compare the ends of the chains.`,
  );
  if (people > 0)
    output.say(`         No seal proves people.json (${people} people): ask the workshop who has which rights.`);
  return EXIT.genuine;
}
