import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import chromium from '@sparticuz/chromium';
import { type Browser, type BrowserContext, chromium as driver, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../worker/embedded/bundle.ts';
import { putDemo } from '../../worker/embedded/demo.ts';
import { type Embedded, startEmbedded } from '../../worker/embedded/embedded.ts';
import { freePort } from '../../worker/embedded/free-port.ts';

/** The rules of WCAG 2.2 up to level AA. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const PHONE = { width: 360, height: 740 };
const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
const complaints: string[] = [];
let service: Embedded;
let browser: Browser;
let context: BrowserContext;
let page: Page;
let address: string;

beforeAll(async () => {
  const adminSecret = 'secret-of-the-browser-test';
  service = await startEmbedded({ script: await bundle(), storage, port: await freePort(18_887), adminSecret });
  address = service.origin + (await putDemo(service.origin, { adminSecret }, () => undefined)).ownerPath;
  browser = await driver.launch({ executablePath: await chromium.executablePath(), args: chromium.args });
  context = await browser.newContext({ viewport: PHONE, javaScriptEnabled: true });
  page = await context.newPage();
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
}, 90_000);

afterAll(async () => {
  await browser?.close();
  await service?.stop();
  rmSync(storage, { recursive: true, force: true });
});

const isWithinWidth = () => page.evaluate<boolean>('document.documentElement.scrollWidth <= window.innerWidth');

const defectsOf = async (): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' ')}`);
};

describe("the owner's page on a phone", () => {
  test('shows on the first screen whether the aircraft is released, by whom and when', async () => {
    await page.goto(address);
    for (const text of ['Q-SLM', 'Released', 'Jonas Veldt', 'Q-SLM-P1-1', 'Open the pack (PDF)']) {
      const box = await page.getByText(text, { exact: true }).first().boundingBox();
      expect((box?.y ?? PHONE.height) + (box?.height ?? 0), text).toBeLessThanOrEqual(PHONE.height);
    }
  });

  test('says every state in words, so that it reads the same in grey', async () => {
    await page.goto(address);
    expect(await page.locator('h1').first().textContent()).toBe('Released');
  });

  test('fits the width, loads all that it asks for and has no accessibility defect', async () => {
    complaints.length = 0;
    await page.goto(address);
    expect(await isWithinWidth()).toBe(true);
    expect(await defectsOf()).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test('leads to every document, each within the width and without defect', { timeout: 120_000 }, async () => {
    await page.goto(address);
    const links = await page.locator('nav a').evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    expect(links.length).toBeGreaterThan(10);
    for (const link of links) {
      await page.goto(service.origin + link);
      expect(await isWithinWidth(), link).toBe(true);
      expect(await defectsOf(), link).toEqual([]);
    }
  });

  test('leads from the contents to the documents themselves', async () => {
    await page.goto(`${address}/documents/cover`);
    await page.getByRole('link', { name: 'Weighing report' }).click();
    expect(page.url()).toBe(`${address}/documents/weighing-report`);
    await page.getByRole('link', { name: 'Back to the overview' }).click();
    expect(page.url()).toBe(address);
  });

  test('has targets that a thumb can hit', async () => {
    await page.goto(address);
    const heights = await page
      .locator('nav a, .button')
      .evaluateAll((all) => all.map((link) => link.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
  });
});
