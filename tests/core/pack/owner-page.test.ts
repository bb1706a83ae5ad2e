import { describe, expect, test } from 'vitest';
import { loadingFacts } from '../../../worker/core/pack/loading-facts.ts';
import { render } from '../../../worker/core/pack/render.ts';
import { type LiveFacts, type OwnerPage, ownerPage } from '../../../worker/core/pack/views/owner-page.ts';
import { recordFormatter } from '../../../worker/core/record/record-formatter.ts';
import { assessed, posted } from './fixture.ts';

const { visit, results } = await assessed(posted('nose-wheel-full'));
const fmt = recordFormatter(visit);

const LIVE: LiveFacts = {
  loading: loadingFacts(visit, results),
  until: '31 Jan 2027',
  isOfWeighingAlone: false,
  past: [],
  tighter: [],
};

const PAGE: OwnerPage = {
  summary: {
    registration: 'Q-SLM',
    pack: 'Q-SLM-P1-1',
    number: 1,
    issue: 1,
    visit: '2026-11',
    issuedAt: '2026-11-05T14:20:00+01:00',
    releasedBy: 'Jonas Veldt',
    regime: 'generic',
    emptyMassKg: 372.9,
    emptyArmMm: 1800,
    supersedes: null,
    findings: { cautions: 0, notes: 0 },
  },
  standing: { isCurrent: true, headline: 'Released', detail: 'The newest release.', detailThen: '' },
  live: LIVE,
  documents: [
    { id: 'cover', title: 'Cover', html: '<article id="cover" lang="en"><h1>Cover</h1></article>' },
    {
      id: 'owner-summary',
      title: 'For the owner',
      html: '<article id="owner-summary" lang="en"><h1>Owner</h1></article>',
    },
  ],
  leading: 'owner-summary',
  path: '/p/token',
  askWhom: undefined,
  sealedBy: 'Workshop (shop)',
  sealKey: '',
  pdfSha256: '0'.repeat(64),
  expiresAt: '2027-11-05T14:20:00+01:00',
  openedAt: '2026-11-06T09:00:00+01:00',
};

const htmlOf = (page: Partial<OwnerPage>): string => render('owner-page', ownerPage({ ...PAGE, ...page }, fmt));

describe('ownerPage()', () => {
  test('shows the leading document of a current pack first, and the others below', () => {
    const html = htmlOf({});
    expect(html).toMatch(/<main[^>]*>\s*<article id="owner-summary"/);
    expect(html).toContain('href="/p/token/documents/cover"');
    expect(html).not.toContain('href="/p/token/documents/owner-summary"');
  });

  test('shows no document first, and nothing to load by, of a pack that no longer holds', () => {
    const standing = { isCurrent: false, headline: 'Superseded', detail: 'Ask.', detailThen: '' };
    const html = htmlOf({ standing, live: undefined, askWhom: 'To be asked: Workshop' });
    expect(html).not.toMatch(/<main|loading-facts/);
    expect(html).toContain('href="/p/token/documents/owner-summary"');
    expect(html).toContain('To be asked: Workshop');
  });

  test('takes care of a limit that has passed', () => {
    const past = [{ what: 'Oil and filter', limit: '1254.6 h' }];
    expect(htmlOf({})).not.toContain('standing released past');
    expect(htmlOf({ live: { ...LIVE, past } })).toContain('standing released past');
  });

  test('lets no text of the record end the element that holds the data', () => {
    const { loading } = LIVE;
    if (!loading) throw new Error('The fixture has nothing to load');
    const stations = loading.aircraft.stations.map((station) => ({ ...station, name: '</script><script>' }));
    const hostile = { ...loading, aircraft: { ...loading.aircraft, stations } };
    const html = htmlOf({ live: { ...LIVE, loading: hostile } });
    const [, json = ''] = /id="loading-facts">(.*?)<\/script>/s.exec(html) ?? [];
    expect(JSON.parse(json)).toEqual(JSON.parse(JSON.stringify(hostile)));
  });
});
