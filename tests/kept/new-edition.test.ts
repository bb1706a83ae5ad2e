import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { SECRETS, WORKSHOP } from './edition.ts';
import { fillEdition } from './fill-edition.ts';

const folder = mkdtempSync(join(tmpdir(), 'slipmark-new-edition-'));
let service: Embedded;

beforeAll(async () => {
  const port = await freePort(20_587);
  service = await startEmbedded({ script: await bundle(), storage: join(folder, 'storage'), port, ...SECRETS });
});

afterAll(async () => {
  await service?.stop();
  rmSync(folder, { recursive: true, force: true });
});

// Whoever changes what is kept makes an edition before that: it has to be possible on any day.
test('an edition can be made of the code of today: every link says what stands', async () => {
  const deployment = slipmark({ origin: service.origin, key: SECRETS.adminSecret });
  const { body } = await deployment.createWorkshop({ body: WORKSHOP });
  const client = slipmark({ origin: service.origin, key: body.key.secret });
  for (const { path, pack, headline } of await fillEdition(client, new Date())) {
    const response = await fetch(service.origin + path);
    expect(response.status, pack).toBe(headline === null ? 404 : 200);
    if (headline !== null) expect(await response.text(), pack).toContain(`<h1>${headline}</h1>`);
  }
  expect((await client.listPeople()).body.items.map(({ id }) => id)).toContain('jonas');
});
