import { globSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from '../../worker/local/service/places.ts';
import type { Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

/** Every page of the documentation, of the problems one. */
const ADDRESSES = globSync('*.html', { cwd: join(ROOT, 'site/dist') })
  .map((file) => `/${file.replace(/(index)?\.html$/, '')}`)
  .concat('/problems/release-blocked');

let site: Site;
let service: Site['service'];
let phone: Phone;

beforeAll(async () => {
  site = await openSite(18_920);
  ({ service, phone } = site);
}, 90_000);

afterAll(() => site?.close());

describe('the documentation', () => {
  test.each(ADDRESSES)(
    '%s fits the width, loads all that it asks for and has no accessibility defect',
    { timeout: 120_000 },
    async (address) => {
      phone.complaints.length = 0;
      await phone.page.goto(service.origin + address);
      expect(await phone.wrongAtAnySize()).toEqual([]);
      expect(phone.complaints).toEqual([]);
    },
  );

  test('can be read by keyboard alone: the first stop leads past the navigation', async () => {
    const { page } = phone;
    await page.goto(`${service.origin}/rules`);
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Skip to the content');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('content');
  });

  test('a finding and a field are found by their own address', async () => {
    const { page } = phone;
    await page.goto(`${service.origin}/rules#RUNS_DISAGREE`);
    expect(await page.locator(':target').textContent()).toContain('Find the cause and weigh again');
    await page.goto(`${service.origin}/record#weighing.scales.capacity`);
    expect(await page.locator(':target').textContent()).toContain('capacity');
  });

  test('a search finds a rule by its words, and leads to it', async () => {
    const { page } = phone;
    await page.goto(`${service.origin}/search?q=voltage+exceed`);
    await page.locator('#found a').first().waitFor();
    await page.locator('#found a', { hasText: 'VOLTAGE_DROP_EXCEEDED' }).click();
    await page.locator('#VOLTAGE_DROP_EXCEEDED:target').waitFor();
    await page.goto(`${service.origin}/search`);
    await page.locator('#query').fill('nowhereatall');
    expect(await page.locator('#count').textContent()).toBe('Nothing has all of these words.');
    expect(new URL(page.url()).search).toBe('?q=nowhereatall');
  });

  test('draws formulas in a face of their own', async () => {
    const { page } = phone;
    await page.goto(`${service.origin}/formulas`);
    expect(await page.evaluate('document.fonts.ready.then(() => document.fonts.check("1em Slipmark Math"))')).toBe(
      true,
    );
  });

  test('is set in the face of the paper', async () => {
    await phone.page.goto(service.origin);
    const faces = '[...document.fonts].filter((face) => face.status === "loaded").map((face) => face.family)';
    expect(await phone.page.evaluate(`document.fonts.ready.then(() => ${faces})`)).toContain('Slipmark Text');
  });
});
