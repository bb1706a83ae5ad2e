import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import * as m from '../../worker/core/text/generated/messages.ts';
import { LANGUAGES, type Language } from '../../worker/core/text/languages.ts';
import { localeOf } from '../../worker/core/text/locale.ts';
import { exampleVisit } from '../../worker/local/service/example-visit.ts';
import type { Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let phone: Phone;
const addresses: Partial<Record<Language, string>> = {};
const addressIn = (language: Language): string => addresses[language] ?? '';

/** Releases the full visit for a workshop that writes a language and makes the link for its owner. */
async function releasedIn(language: Language, { service: { origin }, secrets }: Site): Promise<string> {
  const admin = slipmark({ origin, key: secrets.adminSecret });
  const { body: made } = await admin.createWorkshop({ body: { id: `writes-${language}`, name: 'Workshop' } });
  const client = slipmark({ origin, key: made.key.secret });
  const { attachments: _attachments, ...record } = exampleVisit('nose-wheel-full', new Date());
  const visit = { registration: record.aircraft.registration, visit: '2026-11' };
  await client.putVisit({ ...visit, body: { ...record, workshop: { ...record.workshop, language } } });
  const { etag } = await client.getAssessment(visit);
  const body = { by: record.release?.by ?? '', knowsOfNoHazard: true };
  const released = await client.releaseVisit({ ...visit, body, ifMatch: etag });
  const link = await client.makeLink({ pack: released.body.pack, body: { audience: 'owner' } });
  return origin + new URL(link.body.url).pathname;
}

beforeAll(async () => {
  site = await openSite(18_927);
  ({ phone } = site);
  for (const language of LANGUAGES) addresses[language] = await releasedIn(language, site);
}, 90_000);

afterAll(() => site?.close());

describe.each(LANGUAGES)('the page of an owner whose workshop writes %s', (language) => {
  test('is in that language, what is made in the browser too', async () => {
    await phone.page.goto(addressIn(language));
    expect(await phone.page.locator('html').getAttribute('lang')).toBe(language);
    const say = sayIn(localeOf(language));
    await phone.page.getByText(say(m.offlinePage_keptDeviceOpensWithout)).waitFor();
    await phone.page.getByText(say(m.answer_typeWhoWhatGoes)).first().waitFor({ state: 'attached' });
  });

  test('fits the width of a phone, long words and all, and has no accessibility defect', async () => {
    await phone.page.goto(addressIn(language));
    for (const closed of await phone.page.locator('details').all())
      await closed.evaluate((element) => element.setAttribute('open', ''));
    expect(await phone.isWithinWidth()).toBe(true);
    expect(await phone.isWithinWidthInLargeText()).toBe(true);
    expect(await phone.defects()).toEqual([]);
  });
});

describe('the page of an owner whose workshop writes German', () => {
  test('says what stands, who released and until when, in German', async () => {
    await phone.page.goto(addressIn('de'));
    const head = await phone.page.locator('header.standing').textContent();
    expect(head).toMatch(/Freigegeben[\s\S]*Durch[\s\S]*Am[\s\S]*Bis\s*\d\d\.\d\d\.\d{4}[\s\S]*Mappe öffnen/);
    const all = (await phone.page.locator('main, section, footer').allTextContents()).join(' ');
    expect(all).toContain('Was als Nächstes fällig ist');
    expect(all).not.toMatch(/\b(?:Until|Released|What is due next|Loading check|usable fuel|at most)\b/);
  });

  test('says when it was opened, where there is no network', async () => {
    await phone.page.goto(addressIn('de'));
    await phone.page.getByText('Auf diesem Gerät gespeichert: Die Seite öffnet sich auch ohne Netz.').waitFor();
    await phone.page.goto(addressIn('de'));
    await phone.page.context().setOffline(true);
    try {
      await phone.page.goto(addressIn('de'));
      const notice = phone.page.getByText('Ohne Netz: Stand vom');
      await notice.waitFor();
      expect(await notice.textContent()).toMatch(/Stand vom \d\d\.\d\d\.\d{4}, \d\d:\d\d\u00a0[+\u2212]\d\d:\d\d\./);
    } finally {
      await phone.page.context().setOffline(false);
    }
  });
});
