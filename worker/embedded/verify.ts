// npm run verify -- pack.pdf --keys keys.json: whether a pack is what its workshop sealed. Asks nobody.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { JSONWebKeySet } from 'jose';
import { type Verdict, verifyFile } from '../seal/verify.ts';

const USAGE = 'Usage: npm run verify -- PACK.pdf --keys KEYS.json   (the keys: GET /v1/workshops/{workshop}/keys.json)';

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

const options = { keys: { type: 'string' } } as const;
const { values, positionals } = parseArgs({ options, allowPositionals: true });
const [file] = positionals;
if (!file || !values.keys || positionals.length > 1) {
  console.error(USAGE);
  process.exitCode = EXIT.notReadable;
} else {
  try {
    const keys = JSON.parse(readFileSync(values.keys, 'utf8')) as JSONWebKeySet;
    process.exitCode = say(await verifyFile(readFileSync(file), keys));
  } catch (error) {
    console.error(`Cannot verify: ${error instanceof Error ? error.message : error}`);
    process.exitCode = EXIT.notReadable;
  }
}
