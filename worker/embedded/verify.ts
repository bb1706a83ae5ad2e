// npm run verify -- PACK.pdf | DIR --keys keys.json: whether a pack, or every pack of an exported folder, is what was sealed. Asks nobody.
import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { JSONWebKeySet } from 'jose';
import { type Verdict, verifyFile } from '../seal/verify.ts';
import { type CheckedFolder, checkFolder } from './moving/check-folder.ts';

const USAGE =
  'Usage: npm run verify -- PACK.pdf|DIR --keys KEYS.json   (the keys: GET /v1/workshops/{workshop}/keys.json; DIR: of npm run export)';

/** What the process answers with. */
const EXIT = { genuine: 0, altered: 1, unproved: 2, notReadable: 3 } as const;

const EXPLANATIONS: Record<Exclude<Verdict['kind'], 'genuine' | 'altered'>, string> = {
  'not-sealed': 'NOT SEALED: the file has no seal, or one that cannot be found any more',
  'key-unknown': 'UNKNOWN KEY: the seal is by a key that is not in the set',
  'seal-false': 'FALSE: the seal is not by the key that it names',
};

function say(verdict: Verdict): number {
  if (verdict.kind !== 'genuine' && verdict.kind !== 'altered') {
    console.log(EXPLANATIONS[verdict.kind]);
    return EXIT.unproved;
  }
  const { pack, workshop, issuedAt, manifestSha256 } = verdict.claims;
  const what = `${pack}, sealed by ${workshop} on ${issuedAt} with key ${verdict.kid}`;
  if (verdict.kind === 'altered') {
    console.log(`ALTERED: ${what}\n         differs in ${verdict.parts.join('; ')}`);
    return EXIT.altered;
  }
  console.log(`GENUINE: ${what}\n         manifest ${manifestSha256}`);
  console.log('         Whether a later pack replaces it, or it was withdrawn, only the archive knows.');
  return EXIT.genuine;
}

function sayFolder({ workshop, aircraft, defects }: CheckedFolder): number {
  if (workshop === undefined) {
    for (const { path, what } of defects) console.log(`NOT READABLE: ${path} ${what}`);
    return EXIT.notReadable;
  }
  for (const { registration, packs, head } of aircraft)
    if (head) console.log(`${registration}: ${packs} packs; the chain ends with entry ${head.seq}, ${head.digest}`);
  for (const { kind, path, what } of defects)
    console.log(`${kind === 'altered' ? 'ALTERED' : 'UNPROVED'}: ${path} ${what}`);
  if (defects.some(({ kind }) => kind === 'altered')) return EXIT.altered;
  if (defects.length > 0) return EXIT.unproved;
  console.log(
    `GENUINE: every pack of ${workshop} in the folder. That nothing came after, only a later end of a chain can tell.`,
  );
  return EXIT.genuine;
}

const options = { keys: { type: 'string' } } as const;
const { values, positionals } = parseArgs({ options, allowPositionals: true });
const [place] = positionals;
if (!place || !values.keys || positionals.length > 1) {
  console.error(USAGE);
  process.exitCode = EXIT.notReadable;
} else {
  try {
    const keys = JSON.parse(readFileSync(values.keys, 'utf8')) as JSONWebKeySet;
    process.exitCode = statSync(place).isDirectory()
      ? sayFolder(await checkFolder(place, keys))
      : say(await verifyFile(readFileSync(place), keys));
  } catch (error) {
    console.error(`Cannot verify: ${error instanceof Error ? error.message : error}`);
    process.exitCode = EXIT.notReadable;
  }
}
