import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../../fixtures/visits/nose-wheel-full.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { type TestService, testService } from '../service.ts';

interface Finding {
  code: string;
  severity: string;
  pointer: string;
  sentence: string;
  data: Record<string, string>;
}

interface Reference {
  pack: string;
  sha256: string;
}

interface Next {
  pack: string | null;
  record: { schemaVersion: number; standing: Reference };
  lacks: { pointer: string }[];
  sections: Record<string, Record<string, unknown>>;
  open: { item: string; kind: string; hoursLeft?: number }[];
  hints?: { products: string[] };
}

interface State {
  named: Reference;
  newest: Reference;
  isNewest: boolean;
  changes: { part: string; before?: unknown; now?: unknown; isStated: boolean }[];
  open: { part: string }[];
}

/** The demo without its documents: none is uploaded here. */
const { attachments: _files, ...FULL } = demo;

let service: TestService;

const visitAt = (registration: string, name: string): string => `/v1/aircraft/${registration}/visits/${name}`;

async function kept(name: string, record: object, registration = 'Q-SLM'): Promise<Finding[]> {
  const at = visitAt(registration, name);
  const before = await service.call(at);
  const condition = before.ok ? { 'If-Match': before.headers.get('ETag') ?? '' } : { 'If-None-Match': '*' };
  const response = await service.call(at, { method: 'PUT', body: record, headers: condition });
  expect(response.ok, await response.clone().text()).toBe(true);
  return (await response.json<{ findings: Finding[] }>()).findings;
}

async function released(name: string, registration = 'Q-SLM'): Promise<string> {
  const at = visitAt(registration, name);
  const headers = { 'If-Match': (await service.call(`${at}/assessment`)).headers.get('ETag') ?? '' };
  const body = { by: 'jonas', knowsOfNoHazard: true };
  const response = await service.call(`${at}/release`, { method: 'POST', body, headers });
  expect(response.status, await response.clone().text()).toBe(201);
  return (await response.json<{ pack: string }>()).pack;
}

async function next(registration = 'Q-SLM', query = ''): Promise<Next> {
  const response = await service.call(`/v1/aircraft/${registration}/next${query}`);
  expect(response.status, await response.clone().text()).toBe(200);
  return response.json<Next>();
}

const json = async <Body>(path: string): Promise<Body> => (await service.call(path)).json<Body>();

/** People of the workshop, as its administrator enters them. */
async function enterPeople(): Promise<void> {
  for (const { id, authorisation, validUntil, ...person } of FULL.people) {
    const body = { ...person, licence: authorisation ?? null, from: null, until: validUntil ?? null };
    const response = await service.call(`/v1/people/${id}`, { method: 'PUT', body });
    expect(response.ok, await response.clone().text()).toBe(true);
  }
}

const READ = [
  { id: 'airframe', outHours: 1210.1 },
  { id: 'engine', outHours: 1209.7 },
  { id: 'propeller', outHours: 617.9 },
];

/** A tyre change, as the shop writes it. */
const tyreChange = (standing: object) => ({
  schemaVersion: 4,
  standing,
  visit: {
    arrivedAt: '2026-11-20T09:00:00+01:00',
    workEndedAt: '2026-11-20T11:00:00+01:00',
    summary: 'Tyre of the left main wheel replaced.',
  },
  meters: { readings: READ, landings: 2330 },
  findings: [
    {
      ...{ id: 'F20', place: 'Left main wheel', text: 'Tyre worn to the cord', severity: 'airworthiness' },
      ...{ foundBy: 'mila', foundAt: '2026-11-20T09:20:00+01:00' },
      ...{ disposition: 'rectified', action: 'Tyre replaced', closedBy: 'mila', closedAt: '2026-11-20T10:30:00+01:00' },
    },
  ],
  release: { by: 'jonas', statement: 'work-complete', scope: 'Tyre of the left main wheel replaced.' },
});

beforeAll(async () => {
  service = await testService({ pipeline });
  service.clock.at = Date.parse('2026-11-05T13:20:00Z');
  await enterPeople();
  await kept('annual', FULL);
  expect(await released('annual')).toBe('Q-SLM-P1-1');
  service.clock.at = Date.parse('2026-11-20T12:00:00Z');
});

describe('the record of a small job', () => {
  test('begins with everything that is valid of the aircraft', async () => {
    const { pack, record, lacks, sections, open } = await next();
    expect(pack).toBe('Q-SLM-P1-1');
    expect(lacks.map(({ pointer }) => pointer)).toEqual(['/visit', '/people']);
    expect(record.standing.sha256).toBe((await json<{ recordSha256: string }>('/v1/packs/Q-SLM-P1-1')).recordSha256);
    expect(sections.aircraft).toEqual(FULL.aircraft);
    expect(sections.lives?.items).toHaveLength(FULL.lives.items.length);
    expect(open.find(({ item }) => item === 'Q-SLM-P1/L02')?.hoursLeft).toBeCloseTo(49.7, 9);
    expect(JSON.stringify(sections)).not.toContain('"jonas"');
  });

  test('has 30 lines or fewer, and its pack names the work in slip, summary and page', async () => {
    const record = tyreChange((await next()).record.standing);
    expect(oneMemberALine(record)).toBeLessThanOrEqual(30);
    expect(await kept('tyre', record)).toEqual([]);
    expect(await json(visitAt('Q-SLM', 'tyre'))).toEqual(record);
    expect(await released('tyre')).toBe('Q-SLM-P2-1');
    const sealed = await json<{ id: string; html: string }[]>('/v1/packs/Q-SLM-P2-1/documents.json');
    const documents = new Map(sealed.map(({ id, html }) => [id, html]));
    for (const id of ['log-book-inserts', 'owner-summary', 'findings'])
      expect(documents.get(id), id).toContain('Tyre replaced');
    expect(documents.get('due-list')).toContain('Q-SLM-P1/L02');
    const link = await service.call('/v1/packs/Q-SLM-P2-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { url } = await link.json<{ url: string }>();
    const page = await (await service.call(new URL(url).pathname, { key: '' })).text();
    expect(page).toContain('Tyre replaced');
  });

  test('is sealed whole: standing file and people are in it', async () => {
    type Whole = typeof FULL & { standing: { kept: Record<string, unknown> } };
    const whole = await json<Whole>('/v1/packs/Q-SLM-P2-1/record.json');
    expect(whole.aircraft).toEqual(FULL.aircraft);
    expect(whole.people.map(({ id }) => id).sort()).toEqual(['jonas', 'mila']);
    // A reading at release alone: the meter did not move.
    expect(whole.meters.readings[1]).toMatchObject({ id: 'engine', of: 'engine', inHours: 1209.7, outHours: 1209.7 });
    expect(Object.keys(whole.standing.kept)).toEqual(
      expect.arrayContaining([
        'antennas',
        'bulletins',
        'electrical',
        'lives',
        'open',
        'readings',
        'surveillance',
        'wiring',
      ]),
    );
    expect(whole).not.toHaveProperty('wiring');
  });

  test('that repeats everything gives the same pack', async () => {
    const whole = await json<object>('/v1/packs/Q-SLM-P2-1/record.json');
    const drafts: string[] = [];
    for (const record of [await json<object>(visitAt('Q-SLM', 'tyre')), whole]) {
      await kept('tyre', record);
      const draft = await service.call(`${visitAt('Q-SLM', 'tyre')}/documents.json`);
      drafts.push(await draft.text());
    }
    expect(drafts[1]).toBe(drafts[0]);
  });

  test('cannot say what the file keeps: that follows from the sealed pack', async () => {
    const { standing } = (await next()).record;
    const record = { ...tyreChange({ ...standing, kept: { open: [], lives: { items: [] } } }), schemaVersion: 4 };
    await kept('forged', record);
    const open = (await json<{ items: { id: string; html: string }[] }>(`${visitAt('Q-SLM', 'forged')}/documents.json`))
      .items;
    expect(open.find(({ id }) => id === 'due-list')?.html).toContain('Q-SLM-P1/L02');
  });

  test('is refused with an unknown digest, other units, or a part that the file does not have', async () => {
    const { standing } = (await next()).record;
    const refused = async (record: object): Promise<Finding[]> => {
      const response = await service.call(visitAt('Q-SLM', 'wrong'), { method: 'PUT', body: record });
      expect(response.status).toBe(422);
      return (await response.json<{ findings: Finding[] }>()).findings;
    };
    expect(await refused(tyreChange({ ...standing, sha256: '0'.repeat(64) }))).toMatchObject([
      { code: 'STANDING_FILE_UNKNOWN', pointer: '/standing' },
    ]);
    const without = ['/aircraft/stations/sidecar', '/aircraft/propeller'];
    const units = { mass: 'lb', arm: 'in', volume: 'usgal' };
    expect(await refused({ ...tyreChange({ ...standing, without }), units, nonsense: 1 })).toMatchObject([
      { code: 'STANDING_ENTRY_UNKNOWN', pointer: '/standing/without/0' },
      { code: 'STANDING_UNITS_DIFFER', pointer: '/units' },
      { code: 'RECORD_KEY_UNKNOWN', pointer: '/nonsense' },
    ]);
  });

  test('completes the entries that it states; findings point into what was posted', async () => {
    const { standing } = (await next()).record;
    const record = {
      ...tyreChange(standing),
      lives: { items: [{ id: 'L02', lastDone: { date: '2026-11-20', hours: 1209.7 } }] },
      aircraft: {
        stations: [{ id: 'baggage', maximumMass: 20 }],
        loadingLimits: [{ id: 'nobody', stations: ['nowhere'] }],
      },
    };
    const response = await service.call(visitAt('Q-SLM', 'oil'), { method: 'PUT', body: record });
    const { findings } = await response.json<{ findings: Finding[] }>();
    expect(response.status).toBe(422);
    expect(findings.every(({ pointer }) => pointer.startsWith('/aircraft/loadingLimits/0/'))).toBe(true);
    const { loadingLimits: _, ...aircraft } = record.aircraft;
    await kept('oil', { ...record, aircraft });
    type Assessment = { results: { due: { id: string; dueHours?: number }[]; schedule: object } };
    const { results } = await json<Assessment>(`${visitAt('Q-SLM', 'oil')}/assessment`);
    expect(results.due).toMatchObject([{ id: 'L02', dueHours: 1259.7 }]);
  });
});

describe('another release meanwhile', () => {
  let state: State;

  test('is reported by the open visit, field by field', async () => {
    const { standing } = (await next()).record;
    const changed = [
      { part: '/aircraft/stations/baggage', because: 'documents-revised', shownBy: 'Manual issue 4', by: 'jonas' },
    ];
    const aircraft = { stations: [{ id: 'baggage', maximumMass: 20 }] };
    const unreasoned = await kept('unreasoned', { ...tyreChange(standing), aircraft });
    expect(unreasoned.filter(({ severity }) => severity === 'blocks')).toMatchObject([
      { code: 'STANDING_VALUE_CHANGED', pointer: '/aircraft/stations/0/maximumMass' },
    ]);
    await kept('open', { ...tyreChange({ ...standing, changed }), aircraft });
    service.clock.at = Date.parse('2026-11-21T12:00:00Z');
    const other = {
      ...tyreChange({ ...standing, changed }),
      visit: {
        arrivedAt: '2026-11-21T09:00:00+01:00',
        workEndedAt: '2026-11-21T11:00:00+01:00',
        summary: 'Baggage limit lowered.',
      },
      findings: [],
      aircraft: { stations: [{ id: 'baggage', maximumMass: 15 }] },
      release: { by: 'jonas', statement: 'work-complete', scope: 'Baggage limit lowered.' },
    };
    expect((await kept('baggage', other)).filter(({ severity }) => severity === 'blocks')).toEqual([]);
    expect(await released('baggage')).toBe('Q-SLM-P3-1');
    const findings = (await json<{ findings: Finding[] }>(`${visitAt('Q-SLM', 'open')}/assessment`)).findings;
    expect(findings.filter(({ severity }) => severity === 'blocks')).toMatchObject([
      { code: 'STANDING_FILE_MOVED', pointer: '/standing/pack', data: { newest: 'Q-SLM-P3-1' } },
    ]);
    state = await json<State>(`${visitAt('Q-SLM', 'open')}/standing`);
    expect(state).toMatchObject({ named: { pack: 'Q-SLM-P2-1' }, newest: { pack: 'Q-SLM-P3-1' }, isNewest: false });
    expect(state.changes).toContainEqual({
      part: '/aircraft/stations/baggage/maximumMass',
      before: 25,
      now: 15,
      isStated: true,
    });
    expect(state.changes.filter(({ isStated }) => !isStated).map(({ part }) => part)).toContain('/baseline/reference');
  });

  test('is taken over by one act, which says whose value stays', async () => {
    const at = visitAt('Q-SLM', 'open');
    const { pack, sha256 } = state.newest;
    const take = ['/aircraft/stations/baggage/maximumMass'];
    const tag = (await service.call(at)).headers.get('ETag') ?? '';
    const call = (body: object, ifMatch?: string) =>
      service.call(`${at}/standing`, { method: 'POST', body, headers: ifMatch ? { 'If-Match': ifMatch } : {} });
    expect((await call({ pack, sha256, take })).status).toBe(428);
    expect((await call({ pack, sha256, take }, '"0"')).status).toBe(412);
    expect((await call({ pack: 'Q-SLM-P2-1', sha256, take }, tag)).status).toBe(409);
    expect((await call({ pack, sha256, take: ['/aircraft/model'] }, tag)).status).toBe(422);
    const taken = await call({ pack, sha256, take }, tag);
    expect(taken.status, await taken.clone().text()).toBe(200);
    const record = await json<{ standing: Reference; aircraft: object }>(at);
    expect(record.standing).toMatchObject({ pack, sha256 });
    expect(record.aircraft).toEqual({ stations: [{ id: 'baggage' }] });
    expect(await json<State>(`${at}/standing`)).toMatchObject({ isNewest: true, changes: [] });
    const { findings } = await json<{ findings: Finding[] }>(`${at}/assessment`);
    expect(findings.filter(({ severity }) => severity === 'blocks')).toEqual([]);
  });
});

describe('a whole record that names no file', () => {
  test('is compared with the file of the newest release', async () => {
    const { aircraft } = FULL;
    const whole = {
      ...FULL,
      visit: {
        arrivedAt: '2026-11-21T14:00:00+01:00',
        workEndedAt: '2026-11-21T15:00:00+01:00',
        summary: 'Looked at again.',
      },
      aircraft: { ...aircraft, maximumMass: aircraft.maximumMass + 50 },
    };
    const findings = await kept('whole', whole);
    expect(findings.filter(({ code }) => code === 'STANDING_VALUE_CHANGED').map(({ pointer }) => pointer)).toContain(
      '/aircraft/maximumMass',
    );
  });
});

describe('an aircraft under new marks', () => {
  test('keeps its file, its open items and their names', async () => {
    const { standing } = (await next()).record;
    const received = { address: FULL.aircraft.address24, at: '2026-11-20T10:00:00+01:00', by: 'jonas' };
    const surveillance = {
      devices: FULL.surveillance.devices.map(({ id, kind }) => ({
        ...{ id, readBack: received },
        ...(kind !== 'locator' && { flightIdentitySet: 'QNEW' }),
      })),
    };
    const record = { ...tyreChange(standing), aircraft: { registration: 'Q-NEW' }, surveillance };
    service.clock.at = Date.parse('2026-11-22T12:00:00Z');
    const findings = await kept('first', record, 'Q-NEW');
    // Nobody decided to defer it again: it is not counted as carried forward.
    expect(findings.map(({ code }) => code)).not.toContain('DEFERRAL_REPEATED');
    expect(findings.map(({ code }) => code)).not.toContain('STANDING_FILE_MOVED');
    expect(await released('first', 'Q-NEW')).toBe('Q-NEW-P1-1');
    const due = await json<{ items: { openItem: string }[]; deferred: { openItem: string }[] }>(
      '/v1/aircraft/Q-NEW/due',
    );
    expect(due.items.map(({ openItem }) => openItem)).toContain('Q-SLM-P1/L02');
    expect(due.deferred.map(({ openItem }) => openItem)).toEqual(['Q-SLM-P1/F4']);
    const after = await next('Q-NEW');
    expect(after.pack).toBe('Q-NEW-P1-1');
    expect(after.open.map(({ item }) => item).sort()).toEqual((await next()).open.map(({ item }) => item).sort());
    expect(after.sections.wiring).toEqual((await next()).sections.wiring);
  });
});

describe('an aircraft without a release', () => {
  test('begins with a blank of its class', async () => {
    const { pack, record, lacks, hints } = await next('Q-GLD', '?class=glider');
    expect(pack).toBeNull();
    expect(record).toMatchObject({ aircraft: { registration: 'Q-GLD', class: 'glider' } });
    expect(lacks.map(({ pointer }) => pointer)).toEqual(
      expect.arrayContaining(['/aircraft/maker', '/people', '/visit']),
    );
    expect(hints?.products).toContain('wing');
    expect((await service.call('/v1/aircraft/Q-GLD/next?class=balloon')).status).toBe(400);
  });
});

describe('another workshop', () => {
  test('takes the file over from a link, with the proof of who sealed it', async () => {
    const link = await service.call('/v1/packs/Q-SLM-P3-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { url } = await link.json<{ url: string }>();
    const beginning = (await (await service.call(`${new URL(url).pathname}/next`, { key: '' })).json()) as Next;
    expect(beginning.sections).not.toHaveProperty('workshop');
    expect(beginning.open.map(({ item }) => item)).toContain('Q-SLM-P1/F4');

    const other = await testService({ pipeline });
    other.clock.at = service.clock.at;
    const record = {
      ...tyreChange(beginning.record.standing),
      workshop: { name: 'Other Hangar' },
      people: FULL.people.filter(({ id }) => id === 'jonas' || id === 'mila'),
    };
    const put = (body: object) => other.call(visitAt('Q-SLM', 'move'), { method: 'PUT', body });
    const answer = await put(record);
    expect(answer.status, await answer.clone().text()).toBe(201);
    const { findings } = await answer.json<{ findings: Finding[] }>();
    expect(findings).toEqual([]);

    const { standing } = beginning.record as unknown as { standing: { proof: { record: string } } };
    const forged = standing.proof.record.replace('"maximumMass":15', '"maximumMass":95');
    expect(forged).not.toBe(standing.proof.record);
    for (const text of [forged, '['.repeat(5000), '{']) {
      const proof = { ...standing.proof, record: text };
      expect((await put({ ...record, standing: { ...standing, proof } })).status).toBe(422);
    }
    const whole = await json<object>('/v1/packs/Q-SLM-P2-1/record.json');
    const copied = await other.call(visitAt('Q-SLM', 'copied'), { method: 'PUT', body: whole });
    const { findings: ofCopy } = await copied.json<{ findings: Finding[] }>();
    expect(ofCopy.map(({ code }) => code)).toContain('STANDING_FILE_UNPROVED');

    const at = visitAt('Q-SLM', 'move');
    const headers = { 'If-Match': (await other.call(`${at}/assessment`)).headers.get('ETag') ?? '' };
    const body = { by: 'jonas', knowsOfNoHazard: true };
    expect((await other.call(`${at}/release`, { method: 'POST', body, headers })).status).toBe(201);
    const after = await (await other.call('/v1/aircraft/Q-SLM/next')).json<Next>();
    expect(after.pack).toBe('Q-SLM-P1-1');
    expect(after.open.map(({ item }) => item).sort()).toEqual(beginning.open.map(({ item }) => item).sort());
    expect(after.sections.electrical).toEqual(beginning.sections.electrical);
  });
});

/** Lines of a record with one part, list entry or plain member on each, as a person writes it. */
function oneMemberALine(value: unknown): number {
  const isPlain = (within: unknown): boolean =>
    typeof within !== 'object' || within === null || Object.values(within).every((each) => typeof each !== 'object');
  const lines = (within: unknown): number =>
    isPlain(within) ? 1 : 2 + Object.values(within as object).reduce((sum: number, each) => sum + lines(each), 0);
  return lines(value);
}
