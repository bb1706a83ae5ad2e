import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { exportFolder } from '../../worker/local/backup/export-folder.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { putDemo } from '../../worker/local/service/demo.ts';
import { startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { openPhone, type Phone } from './phone.ts';

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
const folder = join(storage, 'export');
let phone: Phone;

beforeAll(async () => {
  const secrets = { adminSecret: 'secret-of-the-folder-test', sealSecret: 'seal-secret-of-the-folder-test' };
  const port = await freePort(19_387);
  const service = await startEmbedded({ script: await bundle(), storage: join(storage, 'service'), port, ...secrets });
  const { key } = await putDemo(service.origin, secrets, () => undefined);
  await exportFolder(slipmark({ origin: service.origin, key }), folder);
  await service.stop();
  phone = await openPhone();
}, 120_000);

afterAll(async () => {
  await phone?.close();
  rmSync(storage, { recursive: true, force: true });
});

describe('an exported folder, opened from the disk', () => {
  test('is read from its first page to the photographs of a document, in its own style and without a complaint', async () => {
    const { page, complaints } = phone;
    await page.goto(pathToFileURL(join(folder, 'index.html')).href);
    expect(await page.evaluate('getComputedStyle(document.body).maxWidth')).not.toBe('none');
    for (const link of ['Q-SLM', 'its documents as pages', 'Photographs']) {
      await page.getByRole('link', { name: link }).first().click();
      expect(await phone.isWithinWidth(), link).toBe(true);
      expect(await phone.defects(), link).toEqual([]);
    }
    const widths = 'Array.from(document.images, (image) => image.naturalWidth)';
    const pictures = await page.evaluate<number[]>(widths);
    expect(pictures.length).toBeGreaterThan(0);
    expect(Math.min(...pictures)).toBeGreaterThan(0);
    await page.getByRole('link', { name: 'Back to the aircraft' }).click();
    expect(await page.title()).toContain('Q-SLM');
    expect(complaints).toEqual([]);
  });
});
