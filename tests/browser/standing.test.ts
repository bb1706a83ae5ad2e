import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Slipmark, VisitRecord } from '../../worker/client/client.ts';
import { annualVisit, clientOfNewWorkshop, keptVisit, releasedVisit, workDay } from './lamp-visit.ts';
import { openPage } from './open-page.ts';
import { openSite, type Site } from './site.ts';

const REGISTRATION = 'Q-STD';
const visit = (name: string) => ({ registration: REGISTRATION, visit: name });

let site: Site;
let page: Page;
let client: Slipmark;
let key: string;
let annual: VisitRecord;

/** A small record that names the standing file after the newest release, and the baggage limit. */
async function smallVisit(maximumMass: number): Promise<VisitRecord> {
  const on = workDay(annual);
  const { record } = (await client.getNext({ registration: REGISTRATION })).body;
  const readings = annual.meters?.readings.map(({ id, outHours }) => ({ id, inHours: outHours, outHours }));
  const reason = { because: 'documents-revised', shownBy: 'Flight manual issue 4', by: 'jonas' };
  const small = {
    ...record,
    standing: {
      ...(record.standing as object),
      changed: [{ part: '/aircraft/stations/baggage/maximumMass', ...reason }],
    },
    people: annual.people,
    visit: { arrivedAt: `${on}T15:00:00+01:00`, workEndedAt: `${on}T15:30:00+01:00`, summary: 'Tyre replaced.' },
    meters: { readings, landings: annual.meters?.landings },
    aircraft: { stations: [{ id: 'baggage', maximumMass }] },
    release: { by: 'jonas', statement: 'work-complete', scope: 'Tyre replaced.' },
  };
  return small as unknown as VisitRecord;
}

beforeAll(async () => {
  site = await openSite(19_020);
  page = site.phone.page;
  page.setDefaultTimeout(15_000);
  ({ client, key } = await clientOfNewWorkshop(site.service.origin, site.secrets.adminSecret));
  annual = annualVisit(REGISTRATION);
  await keptVisit(client, visit('annual'), annual);
  await releasedVisit(client, visit('annual'));
  await keptVisit(client, visit('tyre'), await smallVisit(20));
  await keptVisit(client, visit('baggage'), await smallVisit(15));
  await releasedVisit(client, visit('baggage'));
});
afterAll(() => site?.close());

describe('the inspector’s page of a small record', () => {
  test('shows documents of the whole aircraft, and no differences in what the record leaves out', async () => {
    await openPage(page, `${site.service.origin}/inspection?aircraft=${REGISTRATION}&visit=tyre`, key);
    const compared = page.locator('#comparison');
    await compared.getByRole('heading', { name: 'Wiring' }).waitFor();
    const wiring = compared.locator('section', { hasText: 'Wiring' });
    expect(await wiring.textContent()).toContain('The same as before.');
    expect(await page.locator('#points').textContent()).toContain(`${REGISTRATION}-P2-1 is the newest release`);
  });

  test('shows what a newer release changed, and takes it over', async () => {
    const point = page.locator('#points .finding', { hasText: 'is the newest release' });
    await point.locator('summary', { hasText: 'Show what changed' }).click();
    const row = point.getByRole('row', { name: /baggage\/maximumMass/ });
    await row.waitFor();
    expect(await row.textContent()).toMatch(/25.*15/);
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await site.phone.smallTargets()).toEqual([]);
    await row.getByRole('checkbox').check();
    await point.getByRole('button', { name: `Build this visit on ${REGISTRATION}-P2-1` }).click();
    await point.waitFor({ state: 'detached' });
    const { body } = await client.getVisit(visit('tyre'));
    expect(body.standing?.pack).toBe(`${REGISTRATION}-P2-1`);
    expect(body.aircraft).toEqual({ stations: [{ id: 'baggage' }] });
  });
});
