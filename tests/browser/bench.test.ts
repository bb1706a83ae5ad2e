import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openSite, type Site } from './site.ts';

let site: Site;
let page: Page;

beforeAll(async () => {
  site = await openSite(18_960);
  page = site.phone.page;
});
afterAll(() => site?.close());

const verdict = (words: RegExp): Promise<void> => page.getByText(words).and(page.locator('#verdict')).waitFor();

const draft = (): Promise<string> => page.evaluate<string>("sessionStorage.getItem('slipmark-bench')");

async function start(example: string): Promise<void> {
  await page.goto(`${site.service.origin}/bench`);
  await page.selectOption('#example', example);
  await verdict(/Nothing blocks the release/);
}

/** Puts the cursor behind a text of the record, as a reader would by searching for it. */
async function typeBehind(text: string, typed: string): Promise<void> {
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+Home');
  await page.keyboard.press('Control+f');
  await page.locator('.cm-search [name=search]').pressSequentially(text);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.type(typed);
}

describe('the bench', () => {
  test('works out an example and shows its results and documents', async () => {
    await start('nose-wheel-full');
    expect(await page.locator('#figures').textContent()).toContain('325.9\u00a0kg');
    await page.getByRole('button', { name: 'working of Weighed empty mass, k = 2' }).click();
    await page.locator('#preview').getByRole('heading', { name: 'Weighing report' }).waitFor();
    expect(await page.locator('#preview').textContent()).toContain('NOT RELEASED');
    expect(await page.locator('#document option').count()).toBeGreaterThan(20);
  });

  test('shows photographs that it was handed, and makes the PDF', async () => {
    await start('nose-wheel-full');
    await page.selectOption('#document', 'photographs');
    await page.locator('#preview img[src^="data:image/"]').first().waitFor();
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    const link = page.getByRole('link', { name: /^Open the PDF/ });
    await link.waitFor();
    expect(await link.getAttribute('href')).toMatch(/^blob:/);
  });

  test('says what is wrong as it is typed, and each finding leads to its line', async () => {
    await start('weighing-only');
    await typeBehind('"maximumMass": 1232', 'e-2');
    await verdict(/points? against the release/);
    await page.keyboard.press('Control+Home');
    const leads = page.locator('#findings .finding.blocks').first().getByRole('button');
    const line = Number((await leads.textContent())?.replace('line ', ''));
    await leads.click();
    const lines = await page.evaluate<string>("sessionStorage.getItem('slipmark-bench')");
    expect(line).toBeGreaterThan(1);
    expect(await page.locator('.cm-activeLine').textContent()).toBe(lines.split('\n')[line - 1]);
    await typeBehind('1232e-2', ',,');
    await verdict(/Not readable yet: 1 defect/);
    expect(await page.locator('#findings').textContent()).toContain('Cannot read the JSON');
    // What was computed last stays in sight.
    expect(await page.locator('#figures').textContent()).toContain('lb');
  });

  test('makes nothing of what was computed before, once the text cannot be read', async () => {
    await start('weighing-only');
    expect(await page.locator('#make-pdf').isEnabled()).toBe(true);
    await typeBehind('1232', ',,');
    await verdict(/Not readable yet/);
    expect(await page.locator('#make-pdf').isDisabled()).toBe(true);
    expect(await page.locator('#stale').isVisible()).toBe(true);
  });

  test('puts back what an example or a dropped file replaced', async () => {
    await start('weighing-only');
    await typeBehind('1232', '9');
    await verdict(/against the release|Not readable/);
    await page.selectOption('#example', 'trike');
    await page.getByText('The previous content was replaced').waitFor();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect.poll(draft).toContain('12329');
  });

  test('takes a file that is dropped on the editor once, and keeps what was handed in before', async () => {
    await start('nose-wheel-full');
    const dropped = readFileSync(new URL('../../fixtures/visits/trike.json', import.meta.url), 'utf8');
    await page.evaluate(
      `(() => {
        const data = new DataTransfer();
        data.items.add(new File([${JSON.stringify(dropped)}], 'trike.json', { type: 'application/json' }));
        const target = document.querySelector('#record').shadowRoot.querySelector('.cm-content');
        target.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, composed: true, cancelable: true }));
      })()`,
    );
    await expect.poll(draft).toBe(dropped);
  });

  test('puts an answer to an open item into the record, to be typed on at its reason', async () => {
    await start('weighing-only');
    const button = page.getByRole('button', { name: 'Answer it' });
    await button.click();
    await page.getByText('Give the name of the open item').waitFor();
    await page.getByLabel('Open item of an earlier pack').fill('Q-WGT-P1/F4');
    await button.click();
    await page.keyboard.type('Damper overhauled');
    await expect.poll(draft).toContain('Damper overhauled');
    const { carried } = JSON.parse(await draft());
    expect(carried).toMatchObject([{ item: 'Q-WGT-P1/F4', by: '', reason: 'Damper overhauled', evidence: '' }]);
    // Nobody is named and nothing proves it yet: it is no answer.
    await verdict(/Not readable yet: 2 defects/);
    await typeBehind('"evidence"', ',');
    await verdict(/Not readable yet: 1 defect/);
    await page.getByLabel('Open item of an earlier pack').fill('Q-WGT-P1/F5');
    await button.click();
    await page.getByText('The record cannot be read').waitFor();
    expect(await page.getByLabel('Open item of an earlier pack').inputValue()).toBe('Q-WGT-P1/F5');
  });

  test('says of brackets beyond measure that they are too deep, and stays alive', async () => {
    site.phone.complaints.length = 0;
    for (const [text, code] of [
      ['[', 'JSON_TOO_DEEP'],
      ['[},', 'JSON_BROKEN'],
    ] as const) {
      await start('weighing-only');
      await page.evaluate(`sessionStorage.setItem('slipmark-bench', '${text}'.repeat(100_000))`);
      await page.reload();
      await page.locator('#findings', { hasText: code }).waitFor();
      await verdict(/Not readable yet: 1 defect/);
    }
    expect(site.phone.complaints).toEqual([]);
    await start('weighing-only');
  });

  test('keeps the text over a reload, and sends nothing but requests for its own files', async () => {
    const asked: string[] = [];
    page.on('request', (request) => asked.push(`${request.method()} ${new URL(request.url()).pathname}`));
    await start('trike');
    await page.reload();
    await verdict(/Nothing blocks the release|point|wait/);
    const foreign = asked.filter(
      (request) => !/^GET \/(bench|assets\/[\w./-]+|examples\/[\w./-]+|[0-9a-f-]{36})$/.test(request),
    );
    expect(foreign).toEqual([]);
  });

  test('fits a desk and a phone, without complaint or defect', async () => {
    site.phone.complaints.length = 0;
    await start('nose-wheel-full');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
    expect(site.phone.complaints).toEqual([]);
  });
});

describe('the weighing form', () => {
  const address = () => `${site.service.origin}/weighing-form`;

  test('gives record and report of what is filled in, in the units chosen', async () => {
    await page.goto(address());
    await page.getByRole('button', { name: 'Fill in an example' }).click();
    await verdict(/Nothing blocks the release/);
    expect(await page.getByLabel('Maximum mass, lb').first().inputValue()).toBe('1232');
    expect(await page.locator('#figures').textContent()).toContain('749.8 ± 1.8\u00a0lb');
    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save the record' }).click();
    expect((await saved).suggestedFilename()).toBe('record.json');
  });

  test('leads from a finding to the field that it is about', async () => {
    await page.goto(address());
    await page.getByRole('button', { name: 'Fill in an example' }).click();
    await verdict(/Nothing blocks the release/);
    await page.locator('[name="/aircraft/maximumMass"]').fill('twelve');
    await verdict(/Not readable yet/);
    await page.locator('#findings').getByRole('button', { name: 'Aircraft: Maximum mass' }).click();
    expect(await page.evaluate('document.activeElement.name')).toBe('/aircraft/maximumMass');
  });

  test('says nothing of a weighing that nobody said', async () => {
    await page.evaluate('sessionStorage.clear()');
    await page.goto(address());
    for (const name of ['/weighing/indoors', '/weighing/fuelState', '/weighing/oilState', '/aircraft/regime'])
      expect(await page.locator(`[name="${name}"]`).inputValue(), name).toBe('');
    expect(await page.locator('#save-record').isVisible()).toBe(false);
  });

  test('takes no comma for a decimal point where it may part thousands', async () => {
    await page.goto(address());
    await page.getByRole('button', { name: 'Fill in an example' }).click();
    await verdict(/Nothing blocks the release/);
    await page.locator('[name="/aircraft/maximumMass"]').fill('1,232');
    await verdict(/Not readable yet/);
    await page.locator('[name="/aircraft/maximumMass"]').fill('1232,0');
    await verdict(/Nothing blocks the release/);
  });

  test('puts back what the example replaced', async () => {
    await page.evaluate('sessionStorage.clear()');
    await page.goto(address());
    await page.locator('[name="/aircraft/registration"]').fill('Q-OWN');
    await page.getByRole('button', { name: 'Fill in an example' }).click();
    await page.getByRole('button', { name: 'Put it back' }).click();
    expect(await page.locator('[name="/aircraft/registration"]').inputValue()).toBe('Q-OWN');
    expect(await page.locator('[name="/weighing/indoors"]').inputValue()).toBe('');
  });

  test('fits a desk and a phone, without complaint or defect', async () => {
    site.phone.complaints.length = 0;
    await page.goto(address());
    await page.getByRole('button', { name: 'Fill in an example' }).click();
    await verdict(/Nothing blocks the release/);
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(site.phone.complaints).toEqual([]);
  });
});
