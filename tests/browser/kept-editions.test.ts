import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { VisitRecord } from '../../worker/client/client.ts';
import { upgrade } from '../../worker/core/record/upgrades.ts';
import { bytesAt, filesUnder } from '../../worker/local/backup/folder.ts';
import { editionNames } from '../kept/edition.ts';
import { type OpenEdition, openEdition } from '../kept/open-edition.ts';
import { openPhone, type Phone } from './phone.ts';

describe.each(editionNames().map((name, index) => ({ name, port: 18_400 + 100 * index })))('edition $name', (made) => {
  let edition: OpenEdition;
  let phone: Phone;

  beforeAll(async () => {
    edition = await openEdition(made.name, made.port);
    phone = await openPhone();
  });

  afterAll(async () => {
    await phone?.close();
    await edition?.close();
  });

  test('every pack is known to the verify page, and none is altered', async () => {
    const { page } = phone;
    const packs = filesUnder(edition.exported).filter((path) => path.endsWith('/pack.pdf'));
    expect(packs.length).toBeGreaterThan(5);
    for (const path of packs) {
      await page.goto(`${edition.origin}/verify`);
      const buffer = Buffer.from(bytesAt(edition.exported, path));
      await page.locator('#file').setInputFiles({ name: 'pack.pdf', mimeType: 'application/pdf', buffer });
      const headline = page.locator('#verdict h2', { hasNotText: 'Working' });
      await headline.waitFor();
      expect(await headline.textContent(), path).toMatch(/^(Genuine|Withdrawn)/);
    }
  });

  test('a visit of today is compared with a pack that it sealed', async () => {
    const { page } = phone;
    const { body } = await edition.client.getVisit({ registration: 'Q-SLM', visit: '2026-11' });
    const today = { registration: 'Q-SLM', visit: 'today' };
    await edition.client.putVisit({ ...today, body: upgrade(body) as VisitRecord });
    await page.goto(`${edition.origin}/inspection?aircraft=Q-SLM&visit=today`);
    await page.locator('#key').fill(edition.key);
    await page.getByRole('button', { name: 'Work with this key' }).click();
    await page.locator('#comparison table').first().waitFor();
    expect(await page.locator('#comparison').textContent()).toContain('Q-SLM-P2-1');
  });
});
