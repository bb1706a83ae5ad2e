import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../../fixtures/visits/nose-wheel-full.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { type TestService, testService } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-SLM';
const visit = (name: string): string => `${AIRCRAFT}/visits/${name}`;

interface Finding {
  code: string;
  severity: string;
  sentence: string;
  data: Record<string, string>;
}

interface Due {
  pack: string;
  withdrawn: string | null;
  items: { id: string; openItem: string; item: string; dueDate?: string; of: string; hoursLeft?: number }[];
  deferred: { openItem: string; untilDate?: string; hoursLeft?: number }[];
  watched: { openItem: string }[];
  limitations: { openItem: string; text: string }[];
}

/** The demo without its papers: nothing is handed in here. */
const { attachments: _files, ...FULL } = demo;

let service: TestService;

async function kept(name: string, record: object): Promise<Finding[]> {
  const before = await service.call(visit(name));
  const condition = before.ok ? { 'If-Match': before.headers.get('ETag') ?? '' } : { 'If-None-Match': '*' };
  const response = await service.call(visit(name), { method: 'PUT', body: record, headers: condition });
  expect(response.ok, await response.clone().text()).toBe(true);
  return (await response.json<{ findings: Finding[] }>()).findings;
}

async function released(name: string): Promise<Response> {
  const headers = { 'If-Match': (await service.call(`${visit(name)}/assessment`)).headers.get('ETag') ?? '' };
  const body = { by: 'jonas', knowsOfNoHazard: true };
  return service.call(`${visit(name)}/release`, { method: 'POST', body, headers });
}

const due = async (): Promise<Due> => (await service.call(`${AIRCRAFT}/due`)).json<Due>();

const pageOf = async (pack: string): Promise<string> => {
  const link = await service.call(`/v1/packs/${pack}/links`, { method: 'POST', body: { audience: 'owner' } });
  const { url } = await link.json<{ url: string }>();
  return (await service.call(new URL(url).pathname, { key: '' })).text();
};

/** A lamp was changed, and nothing else: a small record of the same aircraft. */
async function lampJob(more: object = {}): Promise<object> {
  const { schemaVersion, units, workshop, people, aircraft, certificates, weighing } = FULL;
  const baseline = await (await service.call('/v1/packs/Q-SLM-P1-1/baseline.json')).json<object>();
  return {
    schemaVersion,
    units,
    workshop,
    people,
    aircraft,
    certificates,
    baseline,
    meters: {
      readings: FULL.meters.readings.map((meter) => ({
        ...meter,
        inHours: meter.outHours + 5.1,
        outHours: meter.outHours + 5.1,
      })),
    },
    visit: {
      arrivedAt: '2026-11-20T09:00:00+01:00',
      workEndedAt: '2026-11-20T12:00:00+01:00',
      summary: 'Landing lamp changed.',
    },
    weighing: { ...weighing, weighedAt: '2026-11-20T11:00:00+01:00' },
    release: { by: 'jonas', statement: 'work-complete', scope: 'The lamp and the weighing alone.' },
    ...more,
  };
}

const answered = (items: readonly string[], answer: string, more: object = {}) =>
  items.map((item) => ({ item, answer, by: 'jonas', at: '2026-11-20T11:30:00+01:00', ...more }));

/** Everything that the demo leaves open; F6 is to be watched. */
const unanswered = (findings: readonly Finding[], code = 'OPEN_ITEM_UNANSWERED'): string[] =>
  findings.filter((finding) => finding.code === code).map(({ data }) => data.item ?? '');

describe('what a pack leaves open', () => {
  let open: string[];

  beforeAll(async () => {
    service = await testService({ pipeline });
    service.clock.at = Date.parse('2026-11-05T13:20:00Z');
    await kept('annual', FULL);
    expect((await released('annual')).status).toBe(201);
    service.clock.at = Date.parse('2026-11-20T12:00:00Z');
  });

  test('is due by its name, a recurring bulletin among it, hours on their meter', async () => {
    const { items, deferred, watched, limitations } = await due();
    expect(items.find(({ openItem }) => openItem === 'Q-SLM-P1/D2-SB-016')).toMatchObject({ basis: 'bulletin' });
    expect(items.find(({ openItem }) => openItem === 'Q-SLM-P1/L02')).toMatchObject({ of: 'engine' });
    expect(deferred).toMatchObject([{ openItem: 'Q-SLM-P1/F4', untilDate: '2027-01-31' }]);
    expect(watched).toMatchObject([{ openItem: 'Q-SLM-P1/F6' }]);
    expect(limitations).toMatchObject([{ openItem: 'Q-SLM-P1/limitation-1' }]);
  });

  test('stops the release of the next visit, item by item, until it is answered for', async () => {
    const findings = await kept('lamp', await lampJob());
    open = unanswered(findings);
    expect(open).toEqual(expect.arrayContaining(['Q-SLM-P1/F4', 'Q-SLM-P1/L01', 'Q-SLM-P1/D2-SB-016']));
    expect(open.length).toBeGreaterThan(12);
    const watched = findings.filter(({ code }) => code === 'WATCHED_ITEM_UNANSWERED');
    expect(watched).toMatchObject([{ severity: 'caution', data: { item: 'Q-SLM-P1/F6' } }]);
    expect((await released('lamp')).status).toBe(409);

    const carried = [
      ...answered(open.slice(1), 'repeated'),
      ...answered(open.slice(0, 1), 'closed', { reason: 'Damper overhauled', evidence: 'Job card 4' }),
      ...answered(['Q-SLM-P1/F6'], 'repeated'),
    ];
    const after = await kept('lamp', await lampJob({ carried }));
    expect(after.filter(({ severity }) => severity !== 'note')).toEqual([]);
    const response = await released('lamp');
    expect(response.status, await response.clone().text()).toBe(201);
  });

  test('stands after the next pack but for what was closed, on the due list and on the owner’s page', async () => {
    const [closed = '', ...rest] = open;
    const { pack, items, deferred, limitations } = await due();
    expect(pack).toBe('Q-SLM-P2-1');
    const names = [...items, ...deferred, ...limitations].map(({ openItem }) => openItem);
    expect(names.sort()).toEqual([...rest].sort());
    expect(names).not.toContain(closed);
    // Hours count on: 1210 h by the meter of the second visit.
    expect(items.find(({ id }) => id === 'L01')?.hoursLeft).toBeCloseTo(94.9, 6);
    const page = await pageOf('Q-SLM-P2-1');
    expect(page).not.toContain('no limit in the record');
    expect(page).toMatch(/Oil and filter \(maintenance, programme\): <strong>4.Nov.2027/);
  });

  test('is what an inspector reads: another pack in between makes it another assessment', async () => {
    const tag = async () => (await service.call(`${visit('next')}/assessment`)).headers.get('ETag');
    const record = await lampJob({
      baseline: await (await service.call('/v1/packs/Q-SLM-P2-1/baseline.json')).json<object>(),
    });
    await kept('next', record);
    const before = await tag();
    const corrected = await lampJob({
      carried: answered([...open, 'Q-SLM-P1/F6'], 'repeated'),
      release: { by: 'jonas', statement: 'work-complete', scope: 'The lamp.', reasonForIssue: 'Scope corrected' },
    });
    await kept('lamp', corrected);
    expect((await released('lamp')).status).toBe(201);
    expect(await tag()).not.toBe(before);
    expect((await due()).deferred).toMatchObject([{ openItem: 'Q-SLM-P1/F4' }]);
  });

  test('counts again after a withdrawal, which closes nothing', async () => {
    const body = { by: 'Jonas Veldt', reason: 'Wrong meter read' };
    await service.call('/v1/packs/Q-SLM-P2-2/withdrawal', { method: 'POST', body });
    const { pack, withdrawn, items } = await due();
    expect([pack, withdrawn]).toEqual(['Q-SLM-P1-1', 'Q-SLM-P2-2']);
    expect(items.map(({ openItem }) => openItem)).toContain('Q-SLM-P1/L01');
    const findings = await kept('next', await lampJob());
    expect(findings.filter(({ code }) => code === 'PACK_WITHDRAWN_UNREPLACED')).toMatchObject([
      { severity: 'caution', data: { pack: 'Q-SLM-P2-2' } },
    ]);
  });
});
