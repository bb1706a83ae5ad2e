// npm run import -- DIR: an exported folder into an empty workshop of another deployment.
import { parseArgs } from 'node:util';
import { clientFor } from './moving/client.ts';
import { importFolder } from './moving/import-folder.ts';

const USAGE = `Usage: npm run import -- DIR [--origin URL] [--key KEY]
  The key needs every scope but release, as the first key of a workshop has. It may be left out where SLIPMARK_KEY is set;
  --origin is http://127.0.0.1:8787 where it is not given`;

/** What the process answers with. */
const EXIT = { imported: 0, failed: 1, notUnderstood: 2 } as const;

async function run(): Promise<number> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      origin: { type: 'string', default: 'http://127.0.0.1:8787' },
      key: { type: 'string', default: process.env.SLIPMARK_KEY ?? '' },
    },
  });
  const [folder] = positionals;
  if (folder === undefined || positionals.length > 1 || values.key === '') {
    console.error(USAGE);
    return EXIT.notUnderstood;
  }
  const imported = await importFolder(clientFor(new URL(values.origin).origin, values.key), folder);
  for (const { registration, packs, isNew, remarks } of imported) {
    console.log(`${registration}: ${packs} packs ${isNew ? 'imported' : 'stood there already'}`);
    for (const remark of remarks) console.log(`  ${remark}`);
  }
  console.log('Digests and ends of the chains are those of the folder, and every pack is known there.');
  console.log('Links were not brought along: they belong to the old address. Make new ones where owners need them.');
  return EXIT.imported;
}

process.exitCode = await run().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  return EXIT.failed;
});
