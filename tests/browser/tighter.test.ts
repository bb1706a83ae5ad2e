import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { TighterLimit } from '../../worker/core/pack/tighter-limits.ts';
import { tighterText } from '../../worker/core/pack/tighter-text.ts';
import { formatterFor } from '../../worker/core/text/formatter.ts';
import { localeOf } from '../../worker/core/text/locale.ts';
import { htmlPage } from '../../worker/edge/http/html-page.ts';
import { openSite, type Site } from './site.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite(18_990);
});
afterAll(() => site?.close());

/** What the page says besides; none of it matters here. */
const VIEW = {
  title: 'Q-SLM release pack 1',
  registration: 'Q-SLM',
  isCurrent: true,
  headline: 'Released',
  detail: 'This is the newest release of the aircraft.',
  releasedBy: 'Jonas Veldt',
  issuedAt: '5 Nov 2026',
  until: '31 Jan 2027',
  past: [],
  needsCare: true,
  pack: 'Q-SLM-P1-1',
  sealedBy: 'Workshop (shop)',
  sealKey: '',
  leadingHtml: '',
  pdfHref: '/pack.pdf',
  documentsTitle: 'Everything in the pack',
  documents: [],
  expiresOn: '5 Nov 2027',
  pdfSha256: '0',
  hasLoading: false,
  loadingJson: '',
  openedAt: '2026-11-05T14:20:00+01:00',
  openedOn: '5 Nov 2026',
};

/** The zero-fuel limit that an earlier edition did not hold the payload to, and one that it did not say. */
const TIGHTER: readonly TighterLimit[] = [
  {
    id: 'full-tanks-payload',
    name: 'Left for crew and baggage with full tanks',
    quantity: 'mass',
    sealed: 110.4,
    now: 82.1,
  },
  { id: 'due/L02', name: 'Oil and filter', quantity: 'hours', sealed: null, now: 1254.6, meter: 'engine' },
];

const METERS: Parameters<typeof tighterText>[1] = {
  meters: { readings: [{ id: 'engine', of: 'engine', basis: 'tacho', inHours: 1204.2, outHours: 1204.5 }] },
};

/** Every limit in a sentence, as the page of the service has it. */
const limitsIn = (language: 'en' | 'de'): string[] => {
  const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' }, localeOf(language));
  return TIGHTER.map((limit) => tighterText(limit, METERS, fmt));
};

const SAID = {
  en: 'By the rules of today this pack allows too much. Keep to the lesser, and ask the workshop for a new pack.',
  de: 'Nach den heutigen Regeln erlaubt diese Mappe zu viel. Bitte den kleineren Wert einhalten und die Werkstatt um eine neue Mappe bitten.',
} as const;

/** The colours of everything in the head. */
const COLOURS = `JSON.stringify([...document.querySelectorAll('body, header.standing, header.standing *')].map((part) => {
  const { color, backgroundColor, borderColor } = getComputedStyle(part);
  return [color, backgroundColor, borderColor];
}))`;

/** The page as the service would make it, without its scripts: they would keep it for when there is no network. */
async function open(language: 'en' | 'de'): Promise<void> {
  const { page } = site.phone;
  const view = { ...VIEW, tighter: limitsIn(language) };
  const made = await htmlPage('owner-page', view, { locale: localeOf(language) }).text();
  const body = made.replaceAll(/<script[^>]*><\/script>/g, '');
  await page.route('**/p/tighter', (route) => route.fulfill({ body, contentType: 'text/html; charset=utf-8' }));
  await page.goto(`${site.service.origin}/p/tighter`);
  await page.unroute('**/p/tighter');
}

describe.each(['en', 'de'] as const)('the page of an owner whose pack allows too much, in %s', (language) => {
  test('says it in its head with every limit, on paper as well', async () => {
    await open(language);
    const { page } = site.phone;
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      const lines = await page.locator('header.standing :is(p.detail, ul.detail li)').allInnerTexts();
      expect(lines.map((line) => line.trim())).toEqual([VIEW.detail, SAID[language], ...limitsIn(language)]);
    }
    await page.emulateMedia({ media: 'screen' });
  });

  test('has its list close under what it belongs to, no further in than its marks need', async () => {
    await open(language);
    const { page } = site.phone;
    const head = await page.locator('p.detail', { hasText: SAID[language] }).boundingBox();
    const first = await page.locator('ul.detail li').first().boundingBox();
    expect((first?.x ?? 0) - (head?.x ?? 0)).toBeLessThanOrEqual(24);
    expect((first?.y ?? 0) - (head?.y ?? 0) - (head?.height ?? 0)).toBeLessThanOrEqual(8);
  });

  test('fits a desk and a phone without defect, and looks the same where a dark look is wanted', async () => {
    await open(language);
    const { page } = site.phone;
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    const light = await page.evaluate<string>(COLOURS);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await site.phone.wrongAtAnySize()).toEqual([]);
    expect(await page.evaluate<string>(COLOURS)).toBe(light);
    await page.emulateMedia({ colorScheme: 'light' });
  });
});
