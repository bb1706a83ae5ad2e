import { statSync } from 'node:fs';
import type { JSONWebKeySet } from 'jose';
import { isKeySet, type Verdict, verifyFile } from '../../core/seal/verify.ts';
import { type CheckedFolder, checkFolder } from '../backup/check-folder.ts';
import { command, FileError, UsageError } from './command.ts';
import { onlyOne } from './only-one.ts';
import type { Output } from './output.ts';
import { bytesOf, textOf } from './read-file.ts';

/** What the process answers with. */
const EXIT = { genuine: 0, altered: 1, unproved: 2, notReadable: 3 } as const;

export const verify = command({
  forms: ['PACK.pdf --keys KEYS.json', 'DIR --keys KEYS.json        DIR as slipmark export wrote it'],
  options: {
    keys: {
      type: 'string',
      value: 'FILE',
      help: 'keys of the workshop, as GET /v1/workshops/{workshop}/keys.json gives them',
    },
  },
  exits: {
    0: 'genuine',
    1: 'altered',
    2: 'unproved: no seal, or none by these keys',
    3: 'not readable, or not understood',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, { keys }, output) {
    const place = onlyOne(positionals, 'A pack or a folder');
    if (keys === undefined) throw new UsageError('--keys must be given');
    const set = keySetIn(keys);
    const isFolder = statSync(place, { throwIfNoEntry: false })?.isDirectory() ?? false;
    return isFolder
      ? sayFolder(await checkFolder(place, set), output)
      : say(await verifyFile(bytesOf(place), set), output);
  },
});

function keySetIn(file: string): JSONWebKeySet {
  try {
    const set: unknown = JSON.parse(textOf(file));
    if (isKeySet(set)) return set;
  } catch (error) {
    if (error instanceof FileError) throw error;
    throw new FileError(`Cannot read ${file}: it is no JSON`);
  }
  throw new FileError(`Cannot read ${file}: it is no set of keys (RFC 7517), for it has no list "keys"`);
}

const EXPLANATIONS: Record<Exclude<Verdict['kind'], 'genuine' | 'altered'>, string> = {
  'not-sealed': 'NOT SEALED: the file has no seal, or one that cannot be found any more',
  'key-unknown': 'UNKNOWN KEY: the seal is by a key that is not in the set',
  'seal-false': 'FALSE: the seal is not by the key that it names',
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
  output.say('         Whether a later pack replaces it, or it was withdrawn, only the archive knows.');
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
    `GENUINE: every pack of ${workshop} in the folder. That nothing came after, only a later end of a chain can tell.`,
  );
  if (people > 0)
    output.say(
      `         No seal proves people.json: who has which rights (${people} people) only the workshop can tell.`,
    );
  return EXIT.genuine;
}
