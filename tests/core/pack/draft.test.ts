import { describe, expect, test } from 'vitest';
import { draftDocuments, draftPdf } from '../../../worker/core/core.ts';
import { pageTexts } from '../print/read-back.ts';
import { AT, assessed, FILES, posted } from './fixture.ts';

const text = (html: string): string => html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');

async function draftOf(record: Record<string, unknown>, at = AT) {
  const documents = await draftDocuments(await assessed(record, at), at);
  return new Map(documents.map(({ id, html }) => [id, text(html)]));
}

/** The demo visit as it would be without its release: a draft of something that could be released. */
const demo = () => posted('nose-wheel-full');

describe('a draft', () => {
  test('invites nobody to use it', async () => {
    const documents = await draftOf(demo());
    for (const [id, words] of documents) {
      expect(words, id).not.toMatch(/Use these|older card|earlier cards|\bis released\b|Released as stated|Issued/);
      expect(words, id).toContain('NOT RELEASED.');
    }
    expect(documents.get('cover')).toMatch(/^ Draft of a release pack, Q-SLM/);
    expect(documents.get('loading-sheet')).toContain('Q-SLM: loading card, draft of 5 Nov 2026');
  });

  test('puts nobody’s name to what nobody has stated', async () => {
    const documents = await draftOf(demo());
    const statement = documents.get('release-statement') ?? '';
    expect(statement).toContain('Nobody has made this statement.');
    for (const id of [
      'release-statement',
      'inspection-record',
      'weight-and-balance-schedule',
      'electrical-load-analysis',
      'log-book-inserts',
    ])
      expect(documents.get(id), id).not.toMatch(
        /Releasing person|Inspection complete|Prepared for release|accepted by|Name Jonas/,
      );
  });

  test('has its mark inside every cut-out', async () => {
    const { bytes } = await draftPdf(await assessed(demo()), AT, { files: FILES });
    const pages = await pageTexts(bytes);
    const cards = pages.filter((page) => /loading card|compass C-0931|log book: Q-SLM/.test(page));
    expect(cards.length).toBeGreaterThanOrEqual(3);
    for (const page of cards) {
      const cuts = page.match(/loading card|compass C-0931|log book: Q-SLM/g)?.length ?? 0;
      // In the head of the document, large across the page, in its foot, and once on each card.
      const marks = page.match(/NOT RELEASED(?!\. Do not paste)/g)?.length ?? 0;
      expect(marks).toBeGreaterThanOrEqual(2 + cuts);
    }
  });

  test('states its time in its mark alone: a minute later nobody has to read it again', async () => {
    const of = async (at: string) => {
      const documents = await draftDocuments(await assessed(posted('weighing-only'), at), at);
      return documents.map(({ id, html }) => `${id} ${html.replaceAll(/<aside class="mark">.*?<\/aside>/gs, '')}`);
    };
    expect(await of('2026-09-18T16:01:00-05:00')).toEqual(await of('2026-09-18T16:00:00-05:00'));
  });

  test('says plainly what is left of the day', async () => {
    const cover = async (at: string) => (await draftOf(demo(), at)).get('cover') ?? '';
    expect(await cover('2026-11-05T14:20:00+01:00')).toContain('Slack 1 h 25 min to the latest take-off.');
    expect(await cover('2026-11-05T17:20:00+01:00')).toContain('Slack the latest take-off has passed.');
    const late = await cover('2026-11-30T14:20:00+01:00');
    expect(late).toContain('Slack the latest take-off has passed.');
    expect(late).toContain('Sunset –');
    expect(late).not.toMatch(/−\d+ min|\d{3,} min/);
    const { departure, ...rest } = demo();
    expect((await draftOf(rest)).get('cover')).not.toContain('Slack');
    const evening = {
      ...(departure as object),
      plannedAt: '2026-11-05T23:00:00+01:00',
      latestAt: '2026-11-05T23:30:00+01:00',
    };
    // Sunset 16:42; arrival 23:00 and 40 minutes later: 6 h 57 min before it.
    expect((await draftOf({ ...rest, departure: evening })).get('cover')).toMatch(
      /Sunset 5 Nov 2026 16:42 \+01:00, 6 h 5\d min before arrival/,
    );
  });
});

describe('a visit whose whole job is a tyre', () => {
  const tyre = () => {
    const {
      modifications: _modifications,
      inspection: _inspection,
      parts: _parts,
      bulletins: _bulletins,
      ...record
    } = demo();
    const findings = [
      {
        id: 'F1',
        place: 'Right main wheel',
        text: 'Tyre worn to the cord',
        severity: 'airworthiness',
        disposition: 'rectified',
        action: 'Tyre and tube replaced',
        closedBy: 'mila',
        closedAt: '2026-11-04T12:05:00+01:00',
      },
    ];
    return { ...record, findings, parts: [{ id: 'P1', description: 'Tyre 6.00-6', partNumber: 'TY-66', quantity: 1 }] };
  };

  test('is named in the log slip and in the owner’s summary', async () => {
    const documents = await draftOf(tyre());
    expect(documents.get('owner-summary')).toContain('F1 Right main wheel: Tyre and tube replaced.');
    expect(documents.get('log-book-inserts')).toContain('Rectified: F1 Right main wheel: Tyre and tube replaced.');
    expect(documents.get('log-book-inserts')).toContain('Parts fitted: Tyre 6.00-6 TY-66.');
  });
});

describe('log slips', () => {
  test('name the bulletins that were done in this visit, each in the book of its product', async () => {
    const slips = (await draftOf(demo())).get('log-book-inserts') ?? '';
    const [airframe = '', engine = ''] = slips.split('Engine log book');
    expect(airframe).toContain('D2-SB-014 Flap hinge bolts (Option 2: bolts replaced)');
    expect(airframe).not.toContain('T4-SI-019');
    expect(engine).toContain('T4-SI-019 Oil type for cold weather');
    expect(engine).not.toContain('D2-SB-014');
    // Not applicable, declined, or done at another visit.
    for (const other of ['T4-SB-031', 'D2-SB-019']) expect(slips).not.toContain(other);
  });

  test('name no bulletin of an earlier visit', async () => {
    const record = demo() as { bulletins: { items: { doneOn?: string }[] } };
    for (const item of record.bulletins.items) if (item.doneOn) item.doneOn = '2025-06-01';
    expect((await draftOf(record as never)).get('log-book-inserts')).not.toContain('Bulletins done');
  });
});

test('the owner’s summary says of which place a finding is that is left', async () => {
  expect((await draftOf(demo())).get('owner-summary')).toContain(
    'F4 Nose leg: Shimmy damper friction at the lower limit.',
  );
});
