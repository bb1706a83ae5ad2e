// npm run export -- --out DIR: the archive of a workshop, or of one aircraft, as a folder that is read and proved without a service.
import { parseArgs } from 'node:util';
import { clientFor } from './moving/client.ts';
import { exportFolder } from './moving/export-folder.ts';

const USAGE = `Usage: npm run export -- --out DIR [--origin URL] [--key KEY] [--aircraft REGISTRATION]
  --key may be left out where SLIPMARK_KEY is set; it needs the scope records. --origin is http://127.0.0.1:8787 where it is not given`;

/** What the process answers with. */
const EXIT = { exported: 0, failed: 1, notUnderstood: 2 } as const;

async function run(): Promise<number> {
  const { values } = parseArgs({
    options: {
      origin: { type: 'string', default: 'http://127.0.0.1:8787' },
      key: { type: 'string', default: process.env.SLIPMARK_KEY ?? '' },
      out: { type: 'string' },
      aircraft: { type: 'string' },
    },
  });
  if (values.out === undefined || values.key === '') {
    console.error(USAGE);
    return EXIT.notUnderstood;
  }
  const client = clientFor(new URL(values.origin).origin, values.key);
  const { workshop, aircraft, files } = await exportFolder(client, values.out, values.aircraft?.toUpperCase());
  console.log(`Exported ${aircraft.length} aircraft of ${workshop} in ${files} files: ${values.out}/index.html`);
  console.log('It holds names, licence numbers and original photographs: keep it as you keep the records themselves.');
  return EXIT.exported;
}

process.exitCode = await run().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  return EXIT.failed;
});
