import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { putDemo } from '../../worker/local/service/demo.ts';
import { redated } from '../../worker/local/service/redated.ts';
import { readFixture } from '../read-fixture.ts';
import { openSite, type Site } from './site.ts';

const WEIGHING = { registration: 'Q-WGT', visit: 'weighing' };
type Weighing = Parameters<typeof redated>[0] & { weighing: { indoors: boolean } };

let site: Site;
let page: Page;
let key: string;

beforeAll(async () => {
  site = await openSite(18_970);
  page = site.phone.page;
  page.setDefaultTimeout(15_000);
  key = (await putDemo(site.service.origin, site.secrets, () => undefined)).key;
  const record = redated(readFixture('visits/weighing-only') as Weighing, new Date());
  record.weighing.indoors = false;
  const client = slipmark({ origin: site.service.origin, key });
  await client.putVisit({ ...WEIGHING, ifNoneMatch: '*', body: record as never });
});
afterAll(() => site?.close());

/** Opens a page of the workshop, and gives the key where it is asked for. */
async function open(path: string): Promise<void> {
  await page.goto(site.service.origin + path);
  await page.locator('#key-form:not([hidden]), #work:not([hidden])').first().waitFor();
  if (!(await page.locator('#key').isVisible())) return;
  await page.locator('#key').fill(key);
  await page.getByRole('button', { name: 'Work with this key' }).click();
}

describe('the pages of a workshop', () => {
  test('ask for a key, forget one that is refused, and keep one for the tab alone', async () => {
    await page.goto(`${site.service.origin}/workshop`);
    await page.locator('#key').fill(`${key.slice(0, -1)}${key.endsWith('A') ? 'B' : 'A'}`);
    await page.getByRole('button', { name: 'Work with this key' }).click();
    await page.getByText('The key is not valid').waitFor();
    expect(await page.locator('#key').isVisible()).toBe(true);
    await open('/workshop');
    await page.getByRole('link', { name: 'Q-SLM' }).waitFor();
    expect(await page.evaluate('JSON.stringify({ ...localStorage }) + document.cookie')).toBe('{}');
    site.phone.complaints.length = 0;
    await page.reload();
    await page.getByRole('link', { name: 'Q-SLM' }).waitFor();
    expect(site.phone.complaints).toEqual([]);
  });

  test('show the fleet: what stands, and how far the visits in hand are', async () => {
    await open('/workshop');
    const row = page.getByRole('row', { name: /Q-WGT/ });
    await row.getByText('1 to accept').waitFor();
    expect(await row.textContent()).toContain('no pack yet');
    expect(await page.getByRole('row', { name: /Q-SLM/ }).textContent()).toContain('released');
    await page.getByLabel('Search by registration').fill('wg');
    expect(await page.locator('#count').textContent()).toBe('1 of 2 aircraft');
    expect(await page.locator('#fleet tr').count()).toBe(1);
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
  });

  test('show an aircraft: what is due, its history, its packs', async () => {
    await open('/aircraft?registration=Q-SLM');
    await page.getByRole('row', { name: /L02 Oil and filter/ }).waitFor();
    await page.locator('#history svg').waitFor();
    expect(await page.locator('#history table').textContent()).toContain('325.9\u00a0kg');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
  });

  test('show in words and by their rule that no pack stands', async () => {
    await open('/aircraft?registration=Q-WGT');
    await page.getByText('No pack was sealed yet.').waitFor();
    expect(await page.locator('#standing').getAttribute('class')).toBe('verdict bad');
    await page.goto(`${site.service.origin}/aircraft?registration=Q-NONE`);
    await page.getByText('There is no such aircraft').waitFor();
    expect(await page.locator('#work').isVisible()).toBe(false);
  });

  test('make a link for the owner, show when it was opened, and revoke it', async () => {
    await open('/aircraft?registration=Q-SLM');
    await page.locator('summary', { hasText: 'Links' }).click();
    await page.getByRole('button', { name: 'Make the owner’s link' }).click();
    const url = await page.locator('#packs a').textContent();
    expect((await fetch(url ?? '')).status).toBe(200);
    await page.reload();
    await page.locator('summary', { hasText: 'Links' }).click();
    const used = page.locator('#packs li', { hasText: 'opened once' });
    await used.getByRole('button', { name: 'Revoke' }).click();
    await used.getByRole('button', { name: 'Revoke it for good' }).click();
    await page.locator('#packs li', { hasText: 'revoked' }).waitFor();
    expect((await fetch(url ?? '')).status).toBe(404);
  });

  test('give the equipment list and the ledger as tables', async () => {
    await open('/aircraft?registration=Q-SLM');
    for (const [button, name, head] of [
      ['Equipment list (CSV)', 'Q-SLM-P1-1-equipment.csv', /^id,.*mass \(kg\)/],
      ['Ledger (CSV)', 'Q-SLM-ledger.csv', /^seq,at,kind,body,previous,digest/],
    ] as const) {
      const downloading = page.waitForEvent('download');
      await page.getByRole('button', { name: button }).click();
      const file = await downloading;
      expect(file.suggestedFilename()).toBe(name);
      const chunks: Uint8Array[] = [];
      for await (const chunk of await file.createReadStream()) chunks.push(chunk as Uint8Array);
      const lines = Buffer.concat(chunks).toString('utf8').split('\r\n');
      expect(lines[0]).toMatch(head);
      expect(lines.length).toBeGreaterThan(3);
    }
  });
});

describe('the inspector’s page', () => {
  const address = '/inspection?aircraft=Q-WGT&visit=weighing';
  const button = () => page.getByRole('button', { name: 'Release and seal' });

  test('shows open points first, each leading to its place in the pack', async () => {
    await open(address);
    const point = page.locator('#points .finding.caution', { hasText: 'WEIGHED_OUTDOORS' });
    await point.getByRole('button', { name: 'Weighing report' }).click();
    await page.locator('#preview').getByRole('heading', { name: 'Weighing report' }).waitFor();
    expect(await page.locator('#preview').textContent()).toContain('NOT RELEASED');
    expect(await button().isDisabled()).toBe(true);
    expect(await page.locator('#verdict').textContent()).toBe(
      'Not to be released yet: 1 caution waits for a decision, no notes',
    );
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
  });

  test('keeps what was typed while the service cannot be reached, and says what to do', async () => {
    await open(address);
    await page.locator('summary', { hasText: 'Accept caution' }).click();
    expect(await page.getByLabel('Accepted by').inputValue()).toBe('');
    await page.getByLabel('Accepted by').selectOption('rufus');
    await page.getByLabel('Reason for accepting it').fill('No wind');
    await page.getByLabel('Ground').selectOption('measured-again');
    await page.route('**/v1/**', (route) => route.abort());
    await page.getByRole('button', { name: 'Put it on record' }).click();
    await page.getByText('The service cannot be reached').waitFor();
    await page.reload();
    await page.getByText('The service cannot be reached').waitFor();
    await page.unroute('**/v1/**');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByLabel('Reason for accepting it').waitFor();
    expect(await page.getByLabel('Reason for accepting it').inputValue()).toBe('No wind');
    expect(await page.getByLabel('Accepted by').inputValue()).toBe('rufus');
  });

  test('ticks the document that is shown, and goes on to the next', async () => {
    await open(address);
    await page.getByRole('button', { name: 'Tick as read, on to the next' }).click();
    expect(await page.locator('#ticks input:checked').count()).toBe(1);
    expect(await page.locator('#document').inputValue()).toBe('owner-summary');
  });

  test('releases once every caution is answered, every document ticked and the statement made', async () => {
    await open(address);
    await page.getByLabel('Reason for accepting it').fill('No wind; the runs agree within one step of the scales');
    await page.getByRole('button', { name: 'Put it on record' }).click();
    await page.locator('#points').getByText('Accepted by Rufus Tallant: No wind').waitFor();
    await page.getByText('Nothing blocks the release').waitFor();
    expect(await button().isDisabled()).toBe(true);
    for (const box of await page.locator('#ticks input').all()) await box.check();
    await page.locator('#hazard').check();
    expect(await button().isEnabled()).toBe(true);
  });

  test('keeps ticks over a reload, and takes them from documents that an amendment changes', async () => {
    await open(address);
    await page.locator('#ticks input').first().waitFor();
    expect(await page.locator('#ticks input:not(:checked)').count()).toBe(0);
    const client = slipmark({ origin: site.service.origin, key });
    const { etag } = await client.getVisit(WEIGHING);
    await client.patchVisit({
      ...WEIGHING,
      ifMatch: etag,
      body: { weighing: { place: 'Apron in front of the hangar' } },
    });
    await page.locator('#hazard').check();
    await button().click();
    await page.getByText('The record was changed since you read it').waitFor();
    expect((await client.getAircraft({ registration: 'Q-WGT' })).body.packs).toBe(0);
    await page.getByRole('button', { name: 'Read it as it is now' }).click();
    await page.locator('#ticks input:not(:checked)').first().waitFor();
    const left = await page.locator('#ticks li:has(input:not(:checked))').allTextContents();
    expect(left).toContain('Weighing report');
    expect(left).not.toContain('Loading sheet');
  });

  test('seals what was read, and makes the owner’s link', async () => {
    await open(address);
    await page.locator('#ticks input').first().waitFor();
    for (const box of await page.locator('#ticks input').all()) await box.check();
    await page.locator('#hazard').check();
    await button().dblclick();
    await page.getByText('Sealed as Q-WGT-P1-1').waitFor();
    expect(await page.locator('#verdict').textContent()).toMatch(/^Q-WGT-P1-1, released/);
    await page.getByRole('button', { name: 'Make the owner’s link' }).click();
    const url = await page.locator('#release a[rel=noreferrer]').textContent();
    expect(await (await fetch(url ?? '')).text()).toContain('Q-WGT');
  });

  test('says of a released visit as which pack it was sealed, and offers no second release', async () => {
    await open(address);
    await page.getByText('Sealed as Q-WGT-P1-1').waitFor();
    expect(await button().count()).toBe(0);
    expect(await page.locator('#preview').isVisible()).toBe(false);
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
  });

  test('shows side by side what changed since the pack before', async () => {
    const client = slipmark({ origin: site.service.origin, key });
    const { body: before } = await client.getVisit(WEIGHING);
    const record = { ...before, aircraft: { ...before.aircraft, maximumMass: 1220 } };
    await client.putVisit({ ...WEIGHING, visit: 'next', ifNoneMatch: '*', body: record });
    await open('/inspection?aircraft=Q-WGT&visit=next');
    const row = page.getByRole('row', { name: /Maximum mass/ });
    await row.waitFor();
    expect(await row.textContent()).toContain('1232.0\u00a0lb1220.0\u00a0lb');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
  });
});
