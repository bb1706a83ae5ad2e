import { describe, expect, test } from 'vitest';
import { openAfter } from '../../../worker/core/calc/open-items/carry-over.ts';
import { type Assessed, assess, type OpenItem } from '../../../worker/core/core.ts';
import { packContext } from '../../../worker/core/pack/context.ts';
import type { PackIdentity } from '../../../worker/core/pack/identity.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import { AT, assessed, posted } from './fixture.ts';

const LATER = '2026-11-20T13:00:00+01:00';
const IDENTITY = {
  pack: 'Q-SLM-P2-1',
  issue: '1',
  issuedAt: LATER,
  visit: 'lamp',
  previous: { pack: 'Q-SLM-P1-1', manifestSha256: '0'.repeat(64) },
  supersedes: undefined,
  sealedBy: undefined,
};

/** What the demo visit leaves open, by its names. */
async function leftOpen(): Promise<OpenItem[]> {
  const { visit } = await assessed(posted('nose-wheel-full'));
  return openAfter([], visit, { pack: 'Q-SLM-P1', at: AT });
}

/** A lamp was changed on the aircraft of the demo, and nothing else is in the record. */
function lampJob(carried: object[]): Record<string, unknown> {
  const { schemaVersion, units, workshop, people, aircraft, weighing, meters } = posted('nose-wheel-full');
  return {
    ...{ schemaVersion, units, workshop, people, aircraft, meters, carried },
    weighing: { ...(weighing as object), weighedAt: '2026-11-20T11:00:00+01:00' },
    visit: {
      arrivedAt: '2026-11-20T09:00:00+01:00',
      workEndedAt: '2026-11-20T12:00:00+01:00',
      summary: 'Landing lamp changed.',
    },
    release: { by: 'jonas', statement: 'work-complete', scope: 'The lamp alone.' },
  };
}

const answered = (item: string, answer: string, more: object = {}) => ({
  ...{ item, answer, by: 'jonas', at: '2026-11-20T11:30:00+01:00' },
  ...more,
});

async function later(carried: object[], open: OpenItem[]): Promise<Assessed> {
  const outcome = await assess(lampJob(carried), LATER, { attachments: FIXTURE_FILES.facts, open });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  return outcome.assessed;
}

/** Its documents as plain text, by identifier. */
async function documentsOf(
  assessment: Assessed,
  language?: 'de',
  of: PackIdentity | { draftAt: string } = IDENTITY,
): Promise<Map<string, string>> {
  const { recordSha256 } = assessment;
  const locale = language && { locale: localeOf(language) };
  const context = packContext(assessment, { of, recordSha256, ...locale });
  const { documents } = await packDocuments(context);
  const text = (html: string): string =>
    html
      .replaceAll(/<[^>]+>/g, ' ')
      .replaceAll('\u00a0', ' ')
      .replaceAll(/\s+/g, ' ');
  return new Map(documents.map(({ id, html }) => [id, text(html)]));
}

describe('the pack of a small job after a big one', () => {
  test('repeats to owner and inspector what stands on, by the pack in which it first stood', async () => {
    const open = await leftOpen();
    const documents = await documentsOf(
      await later(
        open.map(({ item = '' }) => answered(item, 'repeated')),
        open,
      ),
    );
    const [summary = '', statement = ''] = [documents.get('owner-summary'), documents.get('release-statement')];
    const { release } = posted('nose-wheel-full') as { release: { limitations: string[] } };
    for (const limitation of release.limitations) {
      expect(summary).toContain(limitation);
      expect(statement).toContain(limitation);
    }
    const untilWhen = '31 Jan 2027 or 1230.0 h, airframe';
    expect(summary).toContain(
      `Q-SLM-P1/F4 Nose leg: Shimmy damper friction at the lower limit. To be done by ${untilWhen}, whichever comes first.`,
    );
    expect(statement).toContain(
      `Q-SLM-P1/F4, Nose leg: Shimmy damper friction at the lower limit: to be done by ${untilWhen}`,
    );
    expect(summary).toMatch(/What is due next .*Shimmy damper friction/);
  });

  test('calls what was given more time by its first name everywhere', async () => {
    const open = await leftOpen();
    const extended = answered('Q-SLM-P1/F4', 'extended', { reason: 'Part on order', evidence: 'F9' });
    const findings = [
      {
        ...(posted('nose-wheel-full').findings as { id: string }[]).find(({ id }) => id === 'F4'),
        id: 'F9',
      },
    ];
    const outcome = await assess({ ...lampJob([extended]), findings }, LATER, {
      attachments: FIXTURE_FILES.facts,
      open,
    });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
    const documents = await documentsOf(outcome.assessed);
    const name = 'Q-SLM-P1/F4 ';
    for (const id of ['owner-summary', 'due-list', 'findings']) {
      expect(documents.get(id)).toContain(name);
      expect(documents.get(id)).not.toMatch(/(?<!; )\bF9\b/);
    }
    expect(documents.get('release-statement')).toContain('Q-SLM-P1/F4, Nose leg');
  });

  test('calls what first stands in a pack by the number of that pack, and in a draft as the record does', async () => {
    const first = await assessed(posted('nose-wheel-full'));
    const numbered = await documentsOf(first);
    for (const id of ['owner-summary', 'due-list', 'findings', 'release-statement'])
      expect(numbered.get(id)).toMatch(/Q-SLM-P2\/F4\b/);
    expect(numbered.get('due-list')).toContain('Q-SLM-P2/L02 ');
    const draft = await documentsOf(first, undefined, { draftAt: AT });
    for (const text of draft.values()) expect(text).not.toContain('Q-SLM-P2');
    expect(draft.get('owner-summary')).toContain(' F4 Nose leg');
  });

  test('has the due list of the aircraft, though this record has no lives', async () => {
    const open = await leftOpen();
    const list = (await documentsOf(await later([], open))).get('due-list') ?? '';
    for (const { item, kind, until } of open)
      if ((kind === 'due' || kind === 'bulletin' || kind === 'deferral') && Object.keys(until).length > 0)
        expect(list).toContain(item);
    expect(list).toContain('Q-SLM-P1/F4 Nose leg: Shimmy damper friction at the lower limit deferred');
    // The demo has flown 1 210.0 h by its meter of the airframe; the engine is counted on a meter of its own.
    expect(list).toMatch(/Q-SLM-P1\/L02 Oil and filter .* h, engine/);
  });

  test('says what became of each item, and in the log book what was closed', async () => {
    const open = await leftOpen();
    const closed = answered('Q-SLM-P1/F4', 'closed', { reason: 'Damper overhauled', evidence: 'Work order 12' });
    const documents = await documentsOf(await later([closed, answered('Q-SLM-P1/F6', 'repeated')], open));
    const findings = documents.get('findings') ?? '';
    expect(findings).toContain('Left open by earlier packs');
    expect(findings).toMatch(
      /Q-SLM-P1\/F4 Nose leg: .* closed Jonas Veldt, 20 Nov 2026 Damper overhauled; Work order 12/,
    );
    expect(findings).toMatch(/Q-SLM-P1\/F6 [^/]* stands on Jonas Veldt/);
    expect(findings).toMatch(/Q-SLM-P1\/L01 [^/]* NOT ANSWERED: stands on/);
    const entry = 'Q-SLM-P1/F4 Nose leg: Shimmy damper friction at the lower limit (Damper overhauled)';
    expect(documents.get('log-book-inserts')).toContain(`Closed from earlier packs: ${entry}.`);
    expect(documents.get('owner-summary')).toContain(entry);
    for (const id of ['due-list', 'release-statement']) expect(documents.get(id)).not.toContain('Q-SLM-P1/F4');
  });

  test('says of a recurring item done again that it was done, and not that it stands', async () => {
    const open = await leftOpen();
    const lives = posted('nose-wheel-full').lives as { items: { id: string; lastDone: object }[] };
    const oil = lives.items.find(({ id }) => id === 'L02');
    const again = { ...oil, lastDone: { date: '2026-11-20', hours: 1211 } };
    const linesOf = async (item: object | undefined): Promise<string> => {
      const record = { ...lampJob([]), lives: { ...lives, items: [item] } };
      const outcome = await assess(record, LATER, { attachments: FIXTURE_FILES.facts, open });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
      return (await documentsOf(outcome.assessed)).get('findings') ?? '';
    };
    expect(await linesOf(again)).toMatch(/Q-SLM-P1\/L02 [^/]* done at this visit, comes due again/);
    expect(await linesOf(oil)).toMatch(/Q-SLM-P1\/L02 [^/]* stands on, as in this record/);
  });

  test('is all in German where the record is', async () => {
    const open = await leftOpen();
    const documents = await documentsOf(await later([answered('Q-SLM-P1/F4', 'repeated')], open), 'de');
    expect(documents.get('findings')).toContain('Von früheren Mappen offen');
    expect(documents.get('release-statement')).toMatch(/Q-SLM-P1\/F4, .*: zu erledigen bis/);
  });
});

test('the cover names what a reader would look for and does not find', async () => {
  const full = await documentsOf(await assessed(posted('nose-wheel-full')));
  expect(full.get('cover')).not.toContain('Not part of this visit');
  const lamp = await documentsOf(await later([], []));
  expect(lamp.get('cover')).toContain(
    'Not part of this visit: inspection of the whole aircraft; review of bulletins; due list; electrical load analysis; engine run; control check; compass swing.',
  );
});

test('due list and release statement head each meter with its product and how it counts', async () => {
  const full = await documentsOf(await assessed(posted('nose-wheel-full')));
  for (const id of ['due-list', 'release-statement'])
    expect(full.get(id)).toContain('Airframe (hour-meter) 1204.9 h Engine (tacho) 1204.5 h');
});

test('what the visit was for stands in the log book of the airframe and in the summary of the owner', async () => {
  const lamp = await documentsOf(await later([], []));
  expect(lamp.get('log-book-inserts')).toMatch(/Total time [^.]+\.\d h, airframe\. Landing lamp changed\. Weighed\./);
  expect(lamp.get('owner-summary')).toContain('Landing lamp changed. No inspection in this visit. Weighed.');
});

describe('a record that states a limit otherwise than the standing file', () => {
  const file = {
    pack: 'Q-SLM-P1-1',
    sha256: '0'.repeat(64),
    sections: { units: posted('nose-wheel-full').units, aircraft: { maximumMass: 590 } },
    open: [],
    readings: {},
  };
  const record = (changed: object[]) => ({
    ...lampJob([]),
    standing: { pack: file.pack, sha256: file.sha256, changed, kept: {} },
  });

  test('prints both values with the reason, and who gave it', async () => {
    const changed = [
      { part: '/aircraft/maximumMass', because: 'documents-revised', shownBy: 'Manual issue 4', by: 'jonas' },
    ];
    const outcome = await assess(record(changed), LATER, { standing: file, attachments: FIXTURE_FILES.facts });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
    expect(outcome.assessed.findings.map(({ code }) => code)).not.toContain('STANDING_VALUE_CHANGED');
    const statement = (await documentsOf(outcome.assessed)).get('release-statement');
    expect(statement).toContain('/aircraft/maximumMass 590 600 documents revised: Manual issue 4 Jonas Veldt');
  });

  test('is blocked without one', async () => {
    const outcome = await assess(record([]), LATER, { standing: file, attachments: FIXTURE_FILES.facts });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
    expect(outcome.assessed.findings).toContainEqual(
      expect.objectContaining({ code: 'STANDING_VALUE_CHANGED', pointer: '/aircraft/maximumMass' }),
    );
  });
});
