import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Slipmark, slipmark } from '../../worker/client/client.ts';
import { exampleVisit } from '../../worker/local/service/example-visit.ts';
import type { Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let phone: Phone;
let page: Page;
let client: Slipmark;

beforeAll(async () => {
  site = await openSite(18_910);
  ({ phone } = site);
  ({ page } = phone);
  const { origin } = site.service;
  const workshop = { id: 'shop', name: 'Workshop' };
  const created = await slipmark({ origin, key: site.secrets.adminSecret }).createWorkshop({ body: workshop });
  client = slipmark({ origin, key: created.body.key.secret });
}, 90_000);

afterAll(() => site?.close());

/** Releases a visit and returns the address of its owner's page. */
async function released(name: string): Promise<string> {
  const record = exampleVisit(name, new Date());
  const visit = { registration: record.aircraft.registration, visit: 'v1' };
  await client.putVisit({ ...visit, body: record });
  const { etag } = await client.getAssessment(visit);
  const body = { by: record.release?.by ?? '', knowsOfNoHazard: true };
  const { body: pack } = await client.releaseVisit({ ...visit, body, ifMatch: etag });
  const { body: link } = await client.makeLink({ pack: pack.pack, body: { audience: 'owner' } });
  return site.service.origin + new URL(link.url).pathname;
}

/** Fills the fields of the loading check, by their labels. */
async function type(values: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, value] of Object.entries(values)) await page.getByLabel(label, { exact: false }).fill(value);
}

describe('the loading check of an aircraft with several configurations', () => {
  test('is for the one that is chosen, with its own stations and limits', { timeout: 90_000 }, async () => {
    await page.goto(await released('floats'));
    const choice = page.getByLabel('Configuration');
    await choice.waitFor();
    expect(await choice.locator('option').allTextContents()).toEqual(['On floats', 'On wheels', 'On skis']);
    expect(await page.getByLabel('Left float locker').count()).toBe(1);
    await choice.selectOption('On wheels');
    expect(await page.getByLabel('Left float locker').count()).toBe(0);
    await type({ 'Left seat': '180', 'Right seat': '220', 'Wing tanks': '25', 'Fuel burnt': '10' });
    const answer = page.locator('#loading-answer');
    expect(await answer.getAttribute('class')).toContain('inside');
    expect(await answer.textContent()).toContain('Maximum 1420.0');
    await choice.selectOption('On skis');
    expect(await page.getByLabel('Right seat').inputValue()).toBe('220');
    expect(await answer.textContent()).toMatch(/^Too heavy by 2[01]\.\d\slb/);
    expect(await phone.isWithinWidth()).toBe(true);
    expect(await phone.defects()).toEqual([]);
  });
});

describe('the loading check of an aircraft with lateral limits', () => {
  test('refuses a loading beyond them, and says on which side', { timeout: 90_000 }, async () => {
    await page.goto(await released('helicopter'));
    await type({
      'Right seat': '235',
      'Left seat': '0',
      'Main tank': '2',
      'Auxiliary tank': '10.5',
      'Fuel burnt': '1',
    });
    const answer = page.locator('#loading-answer');
    expect(await answer.getAttribute('class')).toContain('outside');
    expect(await answer.textContent()).toMatch(/beyond the limit on the right/);
  });
});
