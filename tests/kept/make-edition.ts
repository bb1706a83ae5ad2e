// node tests/kept/make-edition.ts NAME: what this very code makes, kept in fixtures/kept/NAME. Later code must go on reading it, so a
// folder that was committed is never made anew.
import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { slipmark } from '../../worker/client/client.ts';
import { exportFolder } from '../../worker/local/backup/export-folder.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { EDITIONS, type Edition, SECRETS, WORKSHOP } from './edition.ts';
import { fillEdition } from './fill-edition.ts';

async function make(name: string): Promise<void> {
  const folder = join(EDITIONS, name);
  if (existsSync(folder)) throw new Error(`${folder} is there already, and is not to be made anew`);
  const storage = mkdtempSync(join(tmpdir(), 'slipmark-edition-'));
  const service = await startEmbedded({ script: await bundle(), storage, port: await freePort(19_587), ...SECRETS });
  const { origin } = service;
  const created = await slipmark({ origin, key: SECRETS.adminSecret }).createWorkshop({ body: WORKSHOP });
  const key = created.body.key.secret;
  const now = new Date();
  const links = await fillEdition(slipmark({ origin, key }), now);
  const person = { label: 'phone of Jonas', scopes: ['records', 'release'], person: 'jonas' } as const;
  const made = await slipmark({ origin, key }).makeKey({ body: { ...person, scopes: [...person.scopes] } });
  await exportFolder(slipmark({ origin, key }), join(folder, 'export'));
  await service.stop();
  const isStorage = (path: string): boolean => !/service\.log$|\/lock$|-shm$/.test(path);
  cpSync(storage, join(folder, 'storage'), { recursive: true, filter: isStorage });
  const edition: Edition = { madeAt: now.toISOString(), key, keyOfJonas: made.body.secret, links };
  writeFileSync(join(folder, 'edition.json'), `${JSON.stringify(edition, null, 2)}\n`);
  rmSync(storage, { recursive: true, force: true });
}

const [name] = process.argv.slice(2);
if (!name) throw new Error('Name the edition: node tests/kept/make-edition.ts NAME');
await make(name);
