import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Slipmark, VisitRecord } from '../../worker/client/client.ts';
import { figuresOf } from '../../worker/core/gate/accepted-figures.ts';
import {
  annualVisit,
  clientOfNewWorkshop,
  keptVisit,
  lampVisit,
  openNames,
  releasedVisit,
  repeated,
  workDay,
} from './lamp-visit.ts';
import { openPage } from './open-page.ts';
import { openSite, type Site } from './site.ts';

const REGISTRATION = 'Q-OPN';
const ANNUAL = { registration: REGISTRATION, visit: 'annual' };
const LAMP = { registration: REGISTRATION, visit: 'lamp' };
const AIRCRAFT = `/aircraft?registration=${REGISTRATION}`;
const INSPECTION = `/inspection?aircraft=${REGISTRATION}&visit=lamp`;

let site: Site;
let page: Page;
let client: Slipmark;
let key: string;
let annual: VisitRecord;
let baseline: VisitRecord['baseline'];

beforeAll(async () => {
  site = await openSite(18_980);
  page = site.phone.page;
  page.setDefaultTimeout(15_000);
  ({ client, key } = await clientOfNewWorkshop(site.service.origin, site.secrets.adminSecret));
  annual = annualVisit(REGISTRATION);
  await keptVisit(client, ANNUAL, annual);
  const pack = await releasedVisit(client, ANNUAL);
  baseline = (await client.getBaseline({ pack })).body;
  await keptVisit(client, LAMP, lampVisit({ annual, baseline, hours: 1210 }));
});
afterAll(() => site?.close());

const ANSWER = { name: 'Answer', exact: true };

const open = (path: string): Promise<void> => openPage(page, site.service.origin + path, key);

/** Text as it is read, its spaces plain. */
const textOf = async (selector: string): Promise<string> =>
  ((await page.locator(selector).textContent()) ?? '').replaceAll('\u00a0', ' ');

const rowOf = async (name: RegExp): Promise<string> =>
  ((await page.getByRole('row', { name }).textContent()) ?? '').replaceAll('\u00a0', ' ');

const point = (item: string) => page.locator('#points .finding', { hasText: new RegExp(`${item}, .* is open`) });

describe('the page of an aircraft', () => {
  test('lists all that stands open by its name, which one press selects', async () => {
    await open(AIRCRAFT);
    await page.getByRole('heading', { name: 'Limitations in force' }).waitFor();
    for (const item of await openNames(client, REGISTRATION))
      expect(await page.locator('#due .open-item', { hasText: new RegExp(`^${item}$`) }).count(), item).toBe(1);
    expect(await rowOf(/Oil and filter/)).toMatch(/L02.*engine.*not due yetQ-OPN-P1\/L02$/);
    await page.getByText('Q-OPN-P1/F4', { exact: true }).click();
    expect(await page.evaluate('getSelection().toString()')).toBe('Q-OPN-P1/F4');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
  });

  test('says what the rules of today allow less of than the pack says', async () => {
    await page.route('**/due', async (route) => {
      const response = await route.fetch();
      const limit = { id: 'maximum-mass', name: 'Maximum mass', quantity: 'mass', sealed: 472.5, now: 450.04 };
      await route.fulfill({ response, json: { ...(await response.json()), tighter: [limit] } });
    });
    await open(AIRCRAFT);
    await page.unroute('**/due');
    const said = await textOf('#due aside');
    expect(said).toContain('By the rules of today Q-OPN-P1-1 allows less than the pack says:');
    expect(said).toContain('Maximum mass: 450.0 kg today; the pack says 472.5 kg');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
  });
});

describe('the inspector’s page', () => {
  test('shows the open item that a point is about, and leads to it in the pack', async () => {
    await open(INSPECTION);
    const line = point('Q-OPN-P1/F4');
    await line.waitFor();
    const said = ((await line.textContent()) ?? '').replaceAll('\u00a0', ' ');
    expect(said).toMatch(
      /Deferred: F4 Nose leg: Shimmy damper.*Limit: .* or 1230\.0 h, airframe\. Left by this record: .*; 20\.0 h, airframe\. State: not due yet\./,
    );
    await line.getByRole('button', { name: 'Findings' }).click();
    await page.locator('#preview .sought', { hasText: 'Q-OPN-P1/F4' }).waitFor();
    await line.locator('summary', { hasText: 'Answer Q-OPN-P1/F4' }).click();
    // Nobody answers for anything, and nothing is answered, unless chosen.
    expect(await line.getByRole('combobox', ANSWER).inputValue()).toBe('');
    expect(await line.getByLabel('Decided by').inputValue()).toBe('');
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.isWithinWidthInLargeText()).toBe(true);
    expect(await site.phone.smallTargets()).toEqual([]);
  });

  test('keeps what was typed over a reload, and puts the answer on record', async () => {
    const on = workDay(annual);
    await open(INSPECTION);
    const line = point('Q-OPN-P1/F4');
    await line.locator('summary', { hasText: 'Answer Q-OPN-P1/F4' }).click();
    await line.getByRole('combobox', ANSWER).selectOption('closed');
    await line.getByLabel('Decided by').selectOption('jonas');
    await line.getByLabel(/^Decided at/).fill(`${on}T11:30`);
    await line.getByLabel('Reason').fill('Damper overhauled');
    await open(INSPECTION);
    // What is owed for a closed item is asked for before anything is sent.
    await line.getByRole('button', { name: 'Put it on record' }).click();
    expect(await line.getByLabel('Evidence').evaluate((field) => field.matches(':invalid'))).toBe(true);
    await line.getByLabel('Evidence').fill('Job card 4');
    await line.getByRole('button', { name: 'Put it on record' }).click();
    await line.waitFor({ state: 'detached' });
    expect((await client.getVisit(LAMP)).body.carried).toEqual([
      {
        item: 'Q-OPN-P1/F4',
        answer: 'closed',
        by: 'jonas',
        at: `${on}T11:30:00+01:00`,
        reason: 'Damper overhauled',
        evidence: 'Job card 4',
      },
    ]);
  });

  test('leads from an answer that lacks something to the answer that is on record', async () => {
    const on = workDay(annual);
    await open(INSPECTION);
    const asked = point('Q-OPN-P1/L03');
    await asked.locator('summary', { hasText: 'Answer ' }).click();
    await asked.getByRole('combobox', ANSWER).selectOption('extended');
    await asked.getByLabel('Decided by').selectOption('jonas');
    await asked.getByLabel(/^Decided at/).fill(`${on}T11:40`);
    await asked.getByLabel('Reason').fill('Hoses sound');
    await asked.getByLabel('Evidence').fill('nothing of the kind');
    await asked.getByRole('button', { name: 'Put it on record' }).click();
    const wrong = page.locator('#points .finding', { hasText: 'CARRIED_INCOMPLETE' });
    await wrong.locator('summary', { hasText: 'Change the answer to Q-OPN-P1/L03' }).click();
    expect(await wrong.getByLabel('Evidence').inputValue()).toBe('nothing of the kind');
    await wrong.getByRole('combobox', ANSWER).selectOption('repeated');
    await wrong.getByLabel('Reason').fill('');
    await wrong.getByLabel('Evidence').fill('');
    await wrong.getByRole('button', { name: 'Put it on record' }).click();
    await wrong.waitFor({ state: 'detached' });
    const { carried } = (await client.getVisit(LAMP)).body;
    expect(carried?.map(({ item, answer }) => `${item} ${answer}`)).toEqual([
      'Q-OPN-P1/F4 closed',
      'Q-OPN-P1/L03 repeated',
    ]);
  });
});

/** Acceptances of every caution of a visit, with its figures. */
async function accepted(visit: typeof LAMP, reason: string) {
  const { findings } = (await client.getAssessment(visit)).body;
  const codes = new Set(findings.filter(({ severity }) => severity === 'caution').map(({ code }) => code));
  return [...codes].map((code) => ({
    ...{ code, by: 'jonas', ground: 'done-later' as const, reason },
    figures: figuresOf(findings as Parameters<typeof figuresOf>[0], code),
  }));
}

describe('once a later pack is there', () => {
  test('the page says in words what is overdue, by how much, and what is within its tolerance', async () => {
    const carried = repeated(await openNames(client, REGISTRATION), workDay(annual));
    const lamp = lampVisit({ annual, baseline, hours: 1312, carried });
    await keptVisit(client, LAMP, lamp);
    const { findings } = (await client.getAssessment(LAMP)).body;
    expect(findings.map(({ code }) => code)).toContain('OPEN_ITEM_OVERDUE');
    // The weighing alone can be released: it says nothing of airworthiness.
    const stated = { by: 'jonas', statement: 'weighing-only', scope: 'The weighing alone.' };
    await keptVisit(client, LAMP, { ...lamp, release: stated });
    const acknowledgements = await accepted(LAMP, 'Not to be flown before the inspection');
    const release = { ...stated, acknowledgements };
    await keptVisit(client, LAMP, { ...lamp, release });
    expect(await releasedVisit(client, LAMP)).toBe('Q-OPN-P2-1');
    await open(AIRCRAFT);
    expect(await rowOf(/Shimmy damper/)).toMatch(/over by 82\.0 h, airframeoverdueQ-OPN-P1\/F4$/);
    expect(await rowOf(/100-hour inspection/)).toMatch(/over by 7\.1 h, airframeoverdue, within its tolerance/);
    expect(await rowOf(/Oil and filter/)).toMatch(/1254\.2 h, engine.*over by 57\.4 h, engineoverdue/);
    expect(await textOf('#due aside')).toMatch(/^\d overdue, 1 of them within tolerance$/);
    const [late] = /^\d+ overdue/.exec(await textOf('#due aside')) ?? [''];
    expect(await textOf('#packs')).toContain('Q-OPN-P1-1, superseded by the later pack Q-OPN-P2-1');
    expect(await textOf('#packs')).toContain('Q-OPN-P2-1 is current, released');
    await open('/workshop');
    await page.getByRole('row', { name: /Q-OPN.*overdue/ }).waitFor();
    expect(await rowOf(/Q-OPN/)).toContain(`; ${late}`);
  });

  test('an earlier visit that is corrected is held against what was before it, and its pack does not stand', async () => {
    await keptVisit(client, ANNUAL, { ...annual, visit: { ...annual.visit, summary: 'Corrected.' } });
    await open(`/inspection?aircraft=${REGISTRATION}&visit=annual`);
    await page.getByText('No earlier pack of this aircraft').waitFor();
    const { findings } = (await client.getAssessment(ANNUAL)).body;
    expect(findings.map(({ code }) => code)).toContain('LATER_PACK_STANDS');
    const acknowledgements = await accepted(ANNUAL, 'The later pack is issued anew');
    const kept = await client.getVisit(ANNUAL);
    const reasonForIssue = 'Summary corrected';
    const release = { ...kept.body.release, reasonForIssue, acknowledgements };
    await client.patchVisit({ ...ANNUAL, ifMatch: kept.etag, body: { release } });
    expect(await releasedVisit(client, ANNUAL)).toBe('Q-OPN-P1-2');
    await open(AIRCRAFT);
    expect(await textOf('#standing')).toMatch(/^Q-OPN-P2-1, released .* figures that Q-OPN-P1-2 corrected since/);
    expect(await page.locator('#standing').getAttribute('class')).toBe('verdict bad');
    expect(await textOf('#packs')).toContain('Q-OPN-P1-1, superseded by issue Q-OPN-P1-2');
    await open(`/inspection?aircraft=${REGISTRATION}&visit=annual`);
    expect(await textOf('#release')).toContain('It is not current: superseded by the later pack Q-OPN-P2-1');
    expect(await page.getByRole('button', { name: 'Make the owner’s link' }).count()).toBe(0);
  });

  test('nobody is sent to it as if it stood, once it is withdrawn', async () => {
    await client.withdrawPack({ pack: 'Q-OPN-P2-1', body: { by: 'Jonas Veldt', reason: 'Wrong meter read' } });
    await open('/workshop');
    await page.getByText('No current release: Q-OPN-P2-1 was withdrawn').waitFor();
    await open(AIRCRAFT);
    expect(await textOf('#standing')).toMatch(
      /^No current release: Q-OPN-P2-1 was withdrawn .* by Jonas Veldt: Wrong meter read$/,
    );
    expect(await textOf('#due aside:first-of-type')).toMatch(/^No current release: .*, so what it closed is open\.$/);
    // It flew as far as the withdrawn pack says, whatever that was withdrawn for.
    expect(await rowOf(/Shimmy damper/)).toMatch(/over by 82\.0 h, airframeoverdue/);
    expect(await textOf('#history')).toMatch(/^From Q-OPN-P1-2, which is not current: do not load/);
    const packs = await page.locator('#packs .pack').allTextContents();
    expect(packs[0]).toMatch(/^Q-OPN-P2-1, withdrawn .*: Wrong meter readPDF, withdrawn/);
    expect(packs[1]).toMatch(/^Q-OPN-P1-2, superseded by .*, which was withdrawn: no current releasePDF, superseded/);
    for (const summary of await page.locator('#packs summary').all()) await summary.click();
    await expect.poll(() => page.getByText('No new link is made').count()).toBe(packs.length);
    expect(await page.getByRole('button', { name: 'Make the owner’s link' }).count()).toBe(0);
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
  });
});
