import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../site/build/launch-browser.ts';
import { slipmark } from '../../worker/client/client.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { putDemo } from '../../worker/local/service/demo.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { PHONE } from './phone.ts';

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
let service: Embedded;
let browser: Browser;
/** A network that can be had to hang: what is asked then is never answered. */
let network: Server;
let isHanging = false;
let address: string;
let key: string;
let page: Page;

beforeAll(async () => {
  const secrets = { adminSecret: 'secret-of-the-offline-test', sealSecret: 'seal-secret-of-the-offline-test' };
  service = await startEmbedded({ script: await bundle(), storage, port: await freePort(18_787), ...secrets });
  const demo = await putDemo(service.origin, secrets, () => undefined);
  key = demo.key;
  network = createServer((asked, answer) => {
    if (isHanging) return;
    const { host: _host, ...headers } = asked.headers;
    const passed = request(service.origin + asked.url, { method: asked.method ?? 'GET', headers }, (response) => {
      answer.writeHead(response.statusCode ?? 500, response.headers);
      response.pipe(answer);
    });
    passed.on('error', () => answer.destroy());
    asked.pipe(passed);
  });
  const port = await freePort(18_830);
  await new Promise<void>((resolve) => {
    network.listen(port, '127.0.0.1', () => resolve());
  });
  address = `http://127.0.0.1:${port}${demo.ownerPath}`;
}, 90_000);

afterAll(async () => {
  network?.closeAllConnections();
  network?.close();
  await service?.stop();
  rmSync(storage, { recursive: true, force: true });
});

// A phone that has never seen the page.
beforeEach(async () => {
  isHanging = false;
  browser = await launchBrowser();
  page = await (await browser.newContext({ viewport: PHONE })).newPage();
});

afterEach(() => browser?.close());

async function openedOnce(): Promise<void> {
  await page.goto(address);
  await page.getByText('Kept on this device').waitFor();
}

async function checksLoadings(): Promise<void> {
  for (const [name, value] of [
    [/^Left seat/, '85'],
    [/^Wing tanks/, '40'],
    [/^Fuel burnt/, '15'],
  ] as const)
    await page.getByLabel(name).fill(value);
  const answer = page.locator('#loading-answer');
  await expect.poll(() => answer.textContent()).toMatch(/^Inside/);
}

describe('the owner’s page, opened once', () => {
  test('opens without a network, checks loadings, and says that it cannot know what became of it', async () => {
    await openedOnce();
    await page.context().setOffline(true);
    await page.goto(address);
    await page.locator('#offline', { hasText: 'Without a network' }).waitFor();
    expect(await page.locator('h1').first().textContent()).toBe('Released');
    expect(await page.getByText('This is the newest').isVisible()).toBe(false);
    expect(await page.getByText('Open the pack (PDF)').isVisible()).toBe(false);
    await checksLoadings();
    const style = await page.evaluate('getComputedStyle(document.querySelector("header.standing")).borderTopWidth');
    expect(style).not.toBe('0px');
  });

  test('opens where the network hangs, from what was kept', async () => {
    await openedOnce();
    isHanging = true;
    // What is seen first, before the network was asked for anything else.
    await page.addInitScript(`addEventListener('DOMContentLoaded', () => {
      const seen = (selector) => document.querySelector(selector)?.checkVisibility();
      globalThis.seenFirst = {
        notice: seen('#offline'),
        pdf: seen('.actions'),
        head: document.querySelector('header.standing').innerText,
      };
    })`);
    await page.goto(address);
    const first = await page.evaluate<{ notice: boolean; pdf: boolean; head: string }>('seenFirst');
    expect([first.notice, first.pdf]).toEqual([true, false]);
    expect(first.head).not.toContain('This is the newest');
    expect(first.head).toMatch(/On \d.* this was the newest release of the aircraft that the workshop had issued\./);
    await page.locator('#offline', { hasText: 'Without a network' }).waitFor();
    await checksLoadings();
  });

  test('is kept without its address, and under the same policy', async () => {
    await openedOnce();
    // A copy that was opened is not kept as it was marked.
    await page.context().setOffline(true);
    await page.goto(address);
    await page.getByText('Kept on this device').waitFor();
    await page.context().setOffline(false);
    const kept = await page.evaluate<{ urls: string; policies: (string | null)[]; isMarked: boolean }>(`(async () => {
      const cache = await caches.open('slipmark-pages-1');
      const requests = await cache.keys();
      const pages = requests.filter(({ url }) => new URL(url).pathname.startsWith('/p/'));
      const responses = await Promise.all(pages.map((request) => cache.match(request)));
      return {
        urls: requests.map(({ url }) => url).join(' '),
        isMarked: (await responses[0].text()).includes('data-as-read='),
        policies: responses.map((response) => response.headers.get('Content-Security-Policy')),
      };
    })()`);
    expect(kept.urls).not.toContain(address.split('/').at(-1));
    expect(kept.isMarked).toBe(false);
    const served = (await fetch(address)).headers.get('Content-Security-Policy');
    expect(kept.policies).toEqual([served]);
  });

  test('counts as one opening', async () => {
    const { body: link } = await slipmark({ origin: service.origin, key }).makeLink({
      pack: 'Q-SLM-P1-1',
      body: { audience: 'owner' },
    });
    await page.goto(new URL(new URL(link.url).pathname, address).href);
    await page.getByText('Kept on this device').waitFor();
    const { body } = await slipmark({ origin: service.origin, key }).listLinks({ pack: 'Q-SLM-P1-1' });
    expect(body.items.find((made) => made.link === link.link)?.timesOpened).toBe(1);
  });
});
