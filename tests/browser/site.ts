import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { openPhone, type Phone } from './phone.ts';

/** A service of its own, and a browser that looks at it. */
export interface Site {
  service: Embedded;
  secrets: { adminSecret: string; sealSecret: string };
  phone: Phone;
  close(): Promise<void>;
}

export async function openSite(port: number): Promise<Site> {
  const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
  const secrets = { adminSecret: 'secret-of-the-browser-test', sealSecret: 'seal-secret-of-the-browser-test' };
  const service = await startEmbedded({ script: await bundle(), storage, port: await freePort(port), ...secrets });
  const phone = await openPhone();
  return {
    service,
    secrets,
    phone,
    async close() {
      await phone.close();
      await service.stop();
      rmSync(storage, { recursive: true, force: true });
    },
  };
}
