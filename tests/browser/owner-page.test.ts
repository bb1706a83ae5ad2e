import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { putDemo } from '../../worker/local/service/demo.ts';
import { PHONE, type Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let phone: Phone;
let page: Page;
let address: string;

beforeAll(async () => {
  site = await openSite(18_887);
  ({ phone } = site);
  ({ page } = phone);
  const { service, secrets } = site;
  address = service.origin + (await putDemo(service.origin, secrets, () => undefined)).ownerPath;
}, 90_000);

afterAll(() => site?.close());

describe("the owner's page on a phone", () => {
  test('shows on the first screen whether the aircraft is released, by whom and when', async () => {
    await page.goto(address);
    for (const text of ['Q-SLM', 'Released', 'Jonas Veldt', 'Until', 'Q-SLM-P1-1', 'Open the pack (PDF)']) {
      const box = await page.getByText(text, { exact: true }).first().boundingBox();
      expect((box?.y ?? PHONE.height) + (box?.height ?? 0), text).toBeLessThanOrEqual(PHONE.height);
    }
  });

  test('shows the limits that hold now on the first screen', async () => {
    await page.goto(address);
    const box = await page.getByRole('row', { name: /^Maximum mass/ }).boundingBox();
    expect((box?.y ?? PHONE.height) + (box?.height ?? 0)).toBeLessThanOrEqual(PHONE.height);
  });

  test('says every state in words, so that it reads the same in grey', async () => {
    await page.goto(address);
    expect(await page.locator('h1').first().textContent()).toBe('Released');
  });

  test('fits the width, loads all that it asks for and has no accessibility defect', async () => {
    phone.complaints.length = 0;
    await page.goto(address);
    expect(await phone.wrongAtAnySize()).toEqual([]);
    expect(phone.complaints).toEqual([]);
  });

  test('is read with text twice as large: nothing leaves the page or its card, and no value stands a letter a line', async () => {
    await page.goto(address);
    await page.locator('#loading-form input').first().waitFor();
    expect(await phone.isWithinWidthInLargeText()).toBe(true);
    await page.evaluate("document.documentElement.style.fontSize = '32px'");
    const right = (selector: string): Promise<number> =>
      page
        .locator(selector)
        .first()
        .evaluate((element) => {
          const range = document.createRange();
          range.selectNodeContents(element);
          return range.getBoundingClientRect().right;
        });
    expect(await right('.standing h1')).toBeLessThanOrEqual(
      await page.locator('.standing').evaluate((card) => card.getBoundingClientRect().right),
    );
    const widths = await page.locator('.standing dd').evaluateAll((all) => all.map((value) => value.clientWidth));
    expect(Math.min(...widths)).toBeGreaterThan(PHONE.width / 2);
  });

  test('leads to every document, each within the width and without defect', { timeout: 120_000 }, async () => {
    await page.goto(address);
    const links = await page
      .locator('.documents summary + p a')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    expect(links.length).toBeGreaterThan(10);
    for (const link of links) {
      await page.goto(site.service.origin + link);
      expect(await phone.isWithinWidth(), link).toBe(true);
      expect(await phone.defects(), link).toEqual([]);
    }
  });

  test('has every document readable in place, reached also from the contents of the pack', async () => {
    await page.goto(address);
    const weighing = page.getByRole('heading', { name: 'Scales', exact: true });
    expect(await weighing.isVisible()).toBe(false);
    await page.locator('summary', { hasText: 'Cover and contents' }).click();
    await page.locator('#cover').getByRole('link', { name: 'Weighing report' }).click();
    await weighing.waitFor();
    expect(await phone.isWithinWidth()).toBe(true);
    expect(await phone.defects()).toEqual([]);
  });

  test('says what is due first, before the pack is opened', async () => {
    await page.goto(address);
    const next = page.locator('h2', { hasText: 'What is due next' }).locator('xpath=following-sibling::ul/li');
    expect(await next.first().textContent()).toMatch(
      /^Nose leg: Shimmy damper friction at the lower limit \(deferred\): .*or 1230.0\u00a0?.?h, airframe$/,
    );
  });

  test('leads from the contents to the documents themselves', async () => {
    await page.goto(`${address}/documents/cover`);
    await page.getByRole('link', { name: 'Weighing report' }).click();
    expect(page.url()).toBe(`${address}/documents/weighing-report`);
    await page.getByRole('link', { name: 'Back to the overview' }).click();
    expect(page.url()).toBe(address);
  });

  test('says when it was read, once somebody comes back to it after hours', async () => {
    await page.goto(address);
    await page.locator('#loading-answer p').waitFor();
    expect(await page.locator('#offline').isVisible()).toBe(false);
    await page.evaluate(`
      document.body.dataset.openedAt = '2026-01-01T08:00:00Z';
      document.dispatchEvent(new Event('visibilitychange'));
    `);
    await page.getByText('Load the page anew').waitFor();
  });

  test('leads on from an address at which there is nothing', async () => {
    await page.goto(`${site.service.origin}/nothing-here`);
    await page.getByRole('heading', { name: 'There is nothing at this address' }).waitFor();
    expect(await phone.wrongAtAnySize()).toEqual([]);
    await page.getByRole('link', { name: 'Search' }).click();
    await page.getByRole('heading', { name: 'Search' }).waitFor();
  });

  test('has targets that a thumb can hit', async () => {
    await page.goto(address);
    const heights = await page
      .locator('.documents summary, .button')
      .evaluateAll((all) => all.map((link) => link.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
  });
});

describe('the loading check on a phone', () => {
  const answer = (): Promise<string | null> => page.locator('#loading-answer').textContent();
  const type = (name: RegExp, value: string): Promise<void> => page.getByLabel(name).fill(value);

  test('judges nothing before anything is typed', async () => {
    await page.goto(address);
    expect(await answer()).toMatch(/^Type in/);
  });

  test('follows the figures as they are typed, and draws them', async () => {
    await page.goto(address);
    await type(/^Left seat/, '85');
    await type(/^Wing tanks/, '40');
    await type(/^Fuel burnt/, '15');
    expect(await answer()).toMatch(/^Inside.*Take-off: 439\.7\u00a0kg.*After the planned burn: 428\.9\u00a0kg/);
    const before = await page.locator('#loading-chart circle').getAttribute('cx');
    await type(/^Baggage bay/, '25');
    expect(await page.locator('#loading-chart circle').getAttribute('cx')).not.toBe(before);
  });

  test('is neutral until pilot, fuel and burn are given, and never green below the least pilot', async () => {
    await page.goto(address);
    const tone = () => page.locator('#loading-answer').getAttribute('class');
    await type(/^Right seat/, '80');
    expect(await answer()).toBe('Enter the pilot first.');
    await type(/^Right seat/, '');
    await type(/^Left seat/, '85');
    expect(await answer()).toMatch(
      /^Still to be typed: Wing tanks, usable fuel; Fuel burnt on the flight\. Type 0 for none\./,
    );
    expect(await tone()).toBe('loading-answer neutral');
    expect(await page.locator('label', { hasText: 'Left seat' }).textContent()).toContain('at least 55, at most 110');
    await type(/^Left seat/, '40');
    await type(/^Wing tanks/, '5');
    await type(/^Fuel burnt/, '4');
    expect(await answer()).toMatch(/^Left seat: 15\.0\u00a0kg below the least pilot of 55\.0\u00a0kg/);
    expect(await tone()).toBe('loading-answer outside');
    expect(await page.getByLabel(/^Left seat/).getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('label', { hasText: 'Left seat' }).locator('strong').textContent()).toBe(
      'Check: at least 55, at most 110',
    );
    expect(await phone.defects()).toEqual([]);
    expect(await phone.isWithinWidth()).toBe(true);
    await type(/^Left seat/, '55');
    expect(await tone()).toBe('loading-answer inside');
  });

  test('speaks the language of the page', async () => {
    const german = await page.context().newPage();
    // Before the scripts of the page run, which wait for its end.
    await german.addInitScript(() =>
      document.addEventListener('readystatechange', () => {
        document.documentElement.lang = 'de';
      }),
    );
    await german.goto(address);
    await german.getByLabel(/^Left seat/).fill('85');
    await german.getByLabel(/^Wing tanks, ausfliegbarer Kraftstoff/).fill('40');
    await german.getByLabel(/^Verbrauch auf dem Flug/).fill('15');
    const said = await german.locator('#loading-answer').textContent();
    await german.close();
    expect(said).toMatch(/^Innerhalb.*Start: 439,7\u00a0kg bei 1\.7\d\d\u00a0mm.*Nach dem geplanten Verbrauch: 428,9/);
    expect(said).not.toMatch(/Take-off|Maximum|burn/);
  });

  test('says plainly when it is outside, by how much, and what would bring it inside', async () => {
    await page.goto(address);
    for (const [name, value] of [
      [/^Left seat/, '100'],
      [/^Right seat/, '100'],
      [/^Baggage bay/, '25'],
      [/^Wing tanks/, '78'],
    ] as const)
      await type(name, value);
    expect(await answer()).toMatch(/^Too heavy by 7\.1\u00a0kg.*Inside with less on Baggage bay: 7\.5 kg/);
    expect(await phone.defects()).toEqual([]);
    expect(await phone.isWithinWidth()).toBe(true);
  });

  test('judges nothing by a figure that it cannot read, or that could be two', async () => {
    await page.goto(address);
    await type(/^Left seat/, '85');
    for (const unread of ['8o', '-80', '1,500', '8.5.1']) {
      await type(/^Right seat/, unread);
      expect(await answer(), unread).toMatch(/^Not judged: Right seat (is not a number|cannot be negative)/);
      expect(await page.getByLabel(/^Right seat/).getAttribute('aria-invalid')).toBe('true');
      expect(await page.locator('#loading-answer').getAttribute('class')).toContain('outside');
      expect(await page.locator('#loading-chart').isVisible()).toBe(false);
    }
    await type(/^Right seat/, '70,5 kg');
    await type(/^Wing tanks/, '40');
    await type(/^Fuel burnt/, '0');
    expect(await answer()).toContain('Take-off: 510.2\u00a0kg');
  });

  test('is never inside with more fuel than a tank holds, or than the flight has', async () => {
    await page.goto(address);
    await type(/^Left seat/, '85');
    await type(/^Wing tanks/, '95');
    expect(await answer()).toMatch(/^Not judged: Wing tanks, usable fuel cannot be more than the tank holds, 78/);
    await type(/^Wing tanks/, '40');
    await type(/^Fuel burnt/, '60');
    expect(await answer()).toMatch(/^More is to be burnt than is aboard/);
    expect(await page.locator('#loading-answer').getAttribute('class')).toContain('outside');
  });
});
