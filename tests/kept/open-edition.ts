import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Slipmark, slipmark } from '../../worker/client/client.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { EDITIONS, type Edition, editionNamed, SECRETS, WORKSHOP } from './edition.ts';

/** An edition in service: today's code on a copy of its storage, and beside it an empty deployment with the same workshop. */
export interface OpenEdition extends Edition {
  origin: string;
  client: Slipmark;
  /** What was exported when it was made. */
  exported: string;
  empty: Slipmark;
  /** For files. */
  folder: string;
  close(): Promise<void>;
}

/** @param spoil does something to its storage before it is served */
export async function openEdition(
  name: string,
  firstPort: number,
  spoil: (storage: string) => void = () => undefined,
): Promise<OpenEdition> {
  const edition = editionNamed(name);
  const folder = mkdtempSync(join(tmpdir(), 'slipmark-kept-'));
  cpSync(join(EDITIONS, name, 'storage'), join(folder, 'storage'), { recursive: true });
  spoil(join(folder, 'storage'));
  const script = await bundle();
  const services: Embedded[] = [];
  const start = async (storage: string): Promise<string> => {
    const port = await freePort(firstPort + 30 * services.length);
    const service = await startEmbedded({ script, storage: join(folder, storage), port, ...SECRETS });
    services.push(service);
    return service.origin;
  };
  const origin = await start('storage');
  const emptyOrigin = await start('empty');
  const deployment = slipmark({ origin: emptyOrigin, key: SECRETS.adminSecret });
  const { body } = await deployment.createWorkshop({ body: WORKSHOP });
  return {
    ...edition,
    origin,
    client: slipmark({ origin, key: edition.key }),
    exported: join(EDITIONS, name, 'export'),
    empty: slipmark({ origin: emptyOrigin, key: body.key.secret }),
    folder,
    async close() {
      for (const service of services) await service.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
