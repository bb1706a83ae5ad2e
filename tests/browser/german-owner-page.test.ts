import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { exampleVisit } from '../../worker/embedded/example-visit.ts';
import type { Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let phone: Phone;
let address: string;

/** Releases the full visit for a workshop that writes German and makes the link for its owner. */
async function releasedInGerman({ service: { origin }, secrets }: Site): Promise<string> {
  const admin = slipmark({ origin, key: secrets.adminSecret });
  const { body: made } = await admin.createWorkshop({ body: { id: 'german', name: 'German workshop' } });
  const client = slipmark({ origin, key: made.key.secret });
  const { attachments: _attachments, ...record } = exampleVisit('nose-wheel-full', new Date());
  const visit = { registration: record.aircraft.registration, visit: 'german' };
  await client.putVisit({ ...visit, body: { ...record, workshop: { ...record.workshop, language: 'de' } } });
  const { etag } = await client.getAssessment(visit);
  const body = { by: record.release?.by ?? '', knowsOfNoHazard: true };
  const released = await client.releaseVisit({ ...visit, body, ifMatch: etag });
  const link = await client.makeLink({ pack: released.body.pack, body: { audience: 'owner' } });
  return origin + new URL(link.body.url).pathname;
}

beforeAll(async () => {
  site = await openSite(18_927);
  ({ phone } = site);
  address = await releasedInGerman(site);
}, 90_000);

afterAll(() => site?.close());

describe('the page of an owner whose workshop writes German', () => {
  test('says what stands, who released and until when, in German', async () => {
    await phone.page.goto(address);
    const head = await phone.page.locator('header.standing').textContent();
    expect(head).toMatch(/Freigegeben[\s\S]*Durch[\s\S]*Am[\s\S]*Bis\s*\d\d\.\d\d\.\d{4}[\s\S]*Mappe öffnen/);
    const all = (await phone.page.locator('main, section, footer').allTextContents()).join(' ');
    expect(all).toContain('Was als Nächstes fällig ist');
    expect(all).not.toMatch(/\b(?:Until|Released|What is due next|Loading check|usable fuel|at most)\b/);
  });

  test('fits the width of a phone, long words and all, and has no accessibility defect', async () => {
    await phone.page.goto(address);
    for (const closed of await phone.page.locator('details').all())
      await closed.evaluate((element) => element.setAttribute('open', ''));
    expect(await phone.isWithinWidth()).toBe(true);
    expect(await phone.isWithinWidthInLargeText()).toBe(true);
    expect(await phone.defects()).toEqual([]);
  });

  test('says when it was opened, where there is no network', async () => {
    await phone.page.goto(address);
    await phone.page.getByText('Auf diesem Gerät gespeichert: Die Seite öffnet sich auch ohne Netz.').waitFor();
    await phone.page.goto(address);
    await phone.page.context().setOffline(true);
    try {
      await phone.page.goto(address);
      const notice = phone.page.getByText('Ohne Netz: Stand vom');
      await notice.waitFor();
      expect(await notice.textContent()).toMatch(/Stand vom \d\d\.\d\d\.\d{4}, \d\d:\d\d\u00a0[+\u2212]\d\d:\d\d\./);
    } finally {
      await phone.page.context().setOffline(false);
    }
  });
});
