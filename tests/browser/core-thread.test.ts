import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openSite, type Site } from './site.ts';

let site: Site;
let page: Page;

beforeAll(async () => {
  site = await openSite(18_990);
  page = site.phone.page;
});
afterEach(() => page.unrouteAll());
afterAll(() => site?.close());

/** Opens the page that computes with something else for the program that does. */
async function openWith(script: string | undefined): Promise<void> {
  await page.route('**/assets/thread.js', (route) =>
    script === undefined ? route.abort() : route.fulfill({ contentType: 'text/javascript', body: script }),
  );
  await page.goto(`${site.service.origin}/bench`);
  await page.selectOption('#example', 'weighing-only');
}

const verdict = (words: RegExp): Promise<void> => page.getByText(words).and(page.locator('#verdict')).waitFor();

const EMPTY = '{ isReadable: true, isReleasable: true, findings: [], figures: [], documents: [] }';

describe('the thread that computes', () => {
  test.each([
    ['cannot be fetched', undefined],
    ['throws as it is loaded', "throw new Error('broken')"],
    ['is no script', '<!doctype html>'],
  ])('a page says so when its program %s', async (_, script) => {
    await openWith(script);
    await verdict(/^Not calculated: The program that computes could not be loaded/);
    expect(await page.locator('#make-pdf').isDisabled()).toBe(true);
  });

  test('a page says so when it stops in the middle', async () => {
    await openWith(`onmessage = ({ data: { id, question } }) => {
      if (question.want === 'pdf') setTimeout(() => { throw new Error('broken'); });
      else postMessage({ id, reply: { sheet: ${EMPTY} } });
    };`);
    await verdict(/Nothing blocks the release/);
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    await page.getByText(/^Not made: The program that computes has stopped/).waitFor();
  });

  test('a page shows what its program answers as wrong', async () => {
    await openWith("onmessage = ({ data }) => postMessage({ id: data.id, reply: { failure: 'It is broken' } });");
    await verdict(/^Not calculated: It is broken$/);
  });
});

test('a document with the name of a part of the page takes nothing from it', async () => {
  await page.goto(`${site.service.origin}/bench`);
  await page.selectOption('#example', 'nose-wheel-full');
  await verdict(/Nothing blocks the release/);
  await page.selectOption('#document', 'findings');
  await page.locator('#preview .scroll > table').first().waitFor();
  expect(await page.locator('[id=findings]').count()).toBe(1);
});
