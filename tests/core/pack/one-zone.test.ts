import { describe, expect, test } from 'vitest';
import { releaseVisit } from '../../../worker/core/gate/release.ts';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { assessed, attestation, posted } from './fixture.ts';

/** The demo visit released at a moment, each document as plain text with plain blanks. */
async function released(at: string, record: Record<string, unknown> = posted('nose-wheel-full'), language?: 'de') {
  const assessment = await assessed(record, at);
  const outcome = releaseVisit(assessment, attestation(assessment, at));
  if (!outcome.ok) throw new Error(canonicalJson(outcome.findings));
  const identity = {
    pack: 'Q-SLM-P1-1',
    issue: '1',
    issuedAt: at,
    visit: 'v',
    previous: undefined,
    supersedes: undefined,
    sealedBy: undefined,
  };
  const { recordSha256 } = assessment;
  const options = { of: identity, recordSha256, released: outcome.released };
  const context = packContext(assessment, { ...options, ...(language && { locale: localeOf(language) }) });
  const { documents } = await packDocuments(context);
  const text = (html: string): string => html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
  return new Map(documents.map(({ id, html }) => [id, text(html)]));
}

describe('every page of a pack stands in the zone of the workshop', () => {
  // The service knows UTC alone; the work ended at 14:05 +01:00 by the record.
  const AT = '2026-11-05T13:20:00.000Z';

  test('the release among them, whatever zone it was asked for in', async () => {
    const documents = await released(AT);
    const all = [...documents.values()].join(' ');
    expect(all).not.toContain('UTC');
    expect(documents.get('cover')).toContain('Issued 5 Nov 2026 14:20 +01:00');
    expect(documents.get('cover')).toContain('Work ended 5 Nov 2026 14:05 +01:00');
    expect(documents.get('release-statement')).toContain('Date 5 Nov 2026 14:20 +01:00');
    expect(documents.get('log-book-inserts')).toContain('Released 5 Nov 2026 14:20 +01:00');
    const offsets = new Set([...all.matchAll(/\d\d:\d\d ([+−]\d\d:\d\d)/g)].map(([, offset]) => offset));
    expect([...offsets]).toEqual(['+01:00']);
  });

  test('is the same pack by whichever zone the moment is written in', async () => {
    expect(await released('2026-11-05T14:20:00+01:00')).toEqual(await released('2026-11-05T08:20:00-05:00'));
  });

  test('moments of the record that carry another offset too', async () => {
    const record = posted('nose-wheel-full') as {
      controls: { checks: { at: string }[] };
      visit: { arrivedAt: string };
    };
    // The same instant, as summer time and as UTC would write it.
    record.visit.arrivedAt = '2026-11-03T10:10:00+02:00';
    const documents = await released(AT, record as never);
    expect(documents.get('cover')).toContain('Arrived 3 Nov 2026 09:10 +01:00');
  });

  test('the day is that of the workshop: shortly after midnight there it is the next', async () => {
    const { departure: _departure, ...record } = posted('nose-wheel-full');
    const documents = await released('2026-11-05T23:30:00Z', record);
    expect(documents.get('cover')).toContain('Issued 6 Nov 2026 00:30 +01:00');
    expect(documents.get('loading-sheet')).toContain('loading card, pack Q-SLM-P1-1, 6 Nov 2026');
  });
});

describe('hours name their meter', () => {
  const AT = '2026-11-05T14:20:00+01:00';
  const HOURS = /\d[\d  .,]*\d h\b(?! in a year)/g;

  // The time of a product is on no meter, and says so.
  test.each([
    ['en', 'airframe', 'engine'],
    ['de', 'Zelle', 'Triebwerk'],
  ] as const)('wherever something is due, in %s', async (language, airframe, engine) => {
    const documents = await released(AT, posted('nose-wheel-full'), language === 'de' ? 'de' : undefined);
    for (const id of ['due-list', 'owner-summary', 'findings', 'bulletins', 'log-book-inserts']) {
      const text = documents.get(id) ?? '';
      // The list of meters at the head of the due list names each by its label.
      const body = id === 'due-list' ? text.slice(text.indexOf('L02')) : text;
      const hours = [...body.matchAll(HOURS)];
      expect(hours.length, id).toBeGreaterThan(0);
      for (const { 0: found, index } of hours) {
        const after = body.slice(index + found.length, index + found.length + 14);
        expect(after, `${id}: ${found}${after}`).toMatch(
          new RegExp(`^(?:, (?:${airframe}|${engine}|propeller|Propeller)| since new| seit neu)`),
        );
      }
    }
  });

  test('by how the meter counts where a product has two', async () => {
    const record = posted('nose-wheel-full') as {
      meters: { readings: object[] };
      findings: { deferral?: object }[];
      lives: { items: { interval: { hours?: number }; meter?: string }[] };
      bulletins: { items: { nextDueHours?: number }[] };
    };
    const [first] = record.meters.readings;
    record.meters.readings.push({ ...first, id: 'airframe-flight', basis: 'flight' });
    const counted = [
      ...record.findings.flatMap(({ deferral }) => deferral ?? []),
      ...record.lives.items.filter(({ interval, meter }) => interval.hours !== undefined && meter === undefined),
      ...record.bulletins.items.filter(({ nextDueHours }) => nextDueHours !== undefined),
    ];
    for (const each of counted) Object.assign(each, { meter: 'airframe' });
    expect((await released(AT, record as never)).get('due-list')).toContain('1304.9 h, airframe (hour-meter)');
  });
});
