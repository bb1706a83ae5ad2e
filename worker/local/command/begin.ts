import { nextRecord, proofInPack, provedFile } from '../../core/core.ts';
import { verifyFile } from '../../core/seal/verify.ts';
import { command, FileError, UsageError } from './command.ts';
import { keySetIn } from './key-set-in.ts';
import { onlyOne } from './only-one.ts';
import { bytesOf } from './read-file.ts';

/** Exit codes. */
const EXIT = { done: 0, unproved: 1, notReadable: 2 } as const;

export const begin = command({
  forms: ['PACK.pdf --keys KEYS.json'],
  options: {
    keys: { type: 'string', value: 'FILE', help: 'published keys of the workshop that sealed the pack' },
  },
  exits: {
    0: 'beginning of the next record printed, as from GET /v1/aircraft/{registration}/next',
    1: 'the pack is not genuine by these keys',
    2: 'file or command line not readable',
  },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run(positionals, { keys }, output) {
    const place = onlyOne(positionals, 'pack');
    if (keys === undefined) throw new UsageError('--keys is missing');
    const set = keySetIn(keys);
    const pdf = bytesOf(place);
    const verdict = await verifyFile(pdf, set);
    if (verdict.kind !== 'genuine') {
      output.complain(`${place} is not genuine by these keys: ${verdict.kind}`);
      output.result({ error: { message: 'The pack is not genuine', verdict: verdict.kind } });
      return EXIT.unproved;
    }
    const { claims, kid } = verdict;
    const inPack = proofInPack(pdf);
    const keyX = set.keys.find((key) => key.kid === kid)?.x;
    const reference = { pack: claims.pack, sha256: claims.recordSha256 };
    const proof = inPack && keyX !== undefined ? { ...inPack, keyX } : undefined;
    const proved = proof && (await provedFile(reference, proof));
    if (!proved) throw new FileError(`Cannot read ${place}: its record does not fit the schema`);
    const next = nextRecord(proved.file, new Date().toISOString(), proof);
    output.file(`${JSON.stringify({ ...next, people: [] }, null, 2)}\n`);
    return EXIT.done;
  },
});
