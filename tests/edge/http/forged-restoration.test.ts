import { runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { calculateJwkThumbprint, exportJWK, generateKeyPair } from 'jose';
import { describe, expect, test } from 'vitest';
import weighingOnly from '../../../fixtures/visits/weighing-only.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { ownerFacts } from '../../../worker/core/pack/owner-facts.ts';
import { sealFile } from '../../../worker/core/seal/seal.ts';
import { BODY_FORM, entryAfter, GENESIS } from '../../../worker/edge/archive/ledger/chain.ts';
import type { ChainEntry } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { sampleFile } from '../../core/seal/sample-file.ts';
import type { SmallRecord } from '../pipeline-double.ts';
import { keep, type TestService, testService } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-WGT';
const AT = '2026-11-10T12:00:00.000Z';
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

const OWN_PAGE = '<article id="owner-summary" lang="en"><header><h1>Owner’s summary</h1></header></article>';

interface Forged {
  record?: object;
  /** What the manifest names, and what is brought instead of it. */
  html?: string;
  brought?: string;
  manifest?: object;
  documents?: string;
  summary?: object;
  /** What is said of the pack beside its documents; without it the pack is of the first form. */
  facts?: unknown;
  /** Files that are brought beside those of the pack. */
  more?: Uint8Array[];
}

/**
 * Somebody with the first key of a workshop of their own, and a key to seal with whose private half they have: they say that it was
 * theirs in an earlier deployment, and restore whatever they have signed with it.
 */
async function forger() {
  const service = await testService({ pipeline });
  service.clock.at = Date.parse('2026-11-20T12:00:00Z');
  const { publicKey, privateKey } = await generateKeyPair('Ed25519', { extractable: true });
  const jwk = await exportJWK(publicKey);
  const kid = await calculateJwkThumbprint(jwk);
  const keys = { keys: [{ ...jwk, kid, alg: 'EdDSA', use: 'sig' }] };
  expect((await service.call('/v1/seal-keys/retired', { method: 'POST', body: keys })).status).toBe(200);

  async function restore(forged: Forged): Promise<Response> {
    const { record = weighingOnly, html = OWN_PAGE, brought = html, manifest = {}, more = [] } = forged;
    const recordJson = canonicalJson(record);
    const documents = forged.documents ?? JSON.stringify([{ id: 'owner-summary', title: 'Summary', html: brought }]);
    const factsJson = forged.facts === undefined ? undefined : canonicalJson(forged.facts);
    const inFacts = factsJson === undefined ? {} : { facts: { sha256: await sha256(factsJson) } };
    const manifestJson = canonicalJson({
      format: factsJson === undefined ? 'slipmark-manifest/1' : 'slipmark-manifest/2',
      pack: 'Q-WGT-P1-1',
      issue: '1',
      registration: 'Q-WGT',
      visit: 'v',
      issuedAt: AT,
      regime: { id: 'generic' },
      release: { name: 'Rufus Tallant' },
      record: { sha256: await sha256(recordJson) },
      documents: [{ id: 'owner-summary', title: 'Summary', sha256: await sha256(html) }],
      attachments: (record as { attachments?: object[] }).attachments ?? [],
      previous: null,
      supersedes: null,
      ...inFacts,
      ...manifest,
    });
    const digests = {
      manifestSha256: await sha256(manifestJson),
      recordSha256: await sha256(recordJson),
      documentsSha256: await sha256(documents),
    };
    const { workshop } = service;
    const { manifestSha256, recordSha256 } = digests;
    const claims = { workshop, registration: 'Q-WGT', pack: 'Q-WGT-P1-1', issue: 1, issuedAt: AT };
    const facts = { ...claims, manifestSha256, recordSha256 };
    const { file, places } = sampleFile();
    const pdf = await sealFile(file, facts, { ...places, parts: [] }, { kid, privateKey });
    const texts = [manifestJson, recordJson, documents, ...(factsJson === undefined ? [] : [factsJson])];
    for (const blob of [pdf, ...texts.map(utf8), ...more]) {
      const path = `${AIRCRAFT}/restoration/blobs/${await sha256(blob)}`;
      expect((await service.call(path, { method: 'PUT', body: blob })).status).toBe(200);
    }
    const by = factsJson === undefined ? {} : { form: BODY_FORM, key: 'k', person: null };
    const kept = { visit: 'v', version: 1, recordSha256, ...by };
    const first = await entryAfter({ seq: 0, digest: GENESIS }, { at: AT, kind: 'visit-kept', body: kept });
    const factsSha256 = factsJson === undefined ? {} : { factsSha256: await sha256(factsJson) };
    const named = { pack: 'Q-WGT-P1-1', visit: 'v', version: 1, ...digests, pdfSha256: await sha256(pdf) };
    const sealed = { ...named, ...factsSha256, ...by };
    const second = await entryAfter(first, { at: AT, kind: 'pack-sealed', body: sealed });
    const summary = {
      registration: 'Q-WGT',
      pack: 'Q-WGT-P1-1',
      number: 1,
      issue: 1,
      visit: 'v',
      issuedAt: AT,
      releasedBy: 'Rufus Tallant',
      regime: 'generic',
      emptyMassKg: null,
      emptyArmMm: null,
      supersedes: null,
      findings: { cautions: 0, notes: 0 },
      ...forged.summary,
    };
    const entries: ChainEntry[] = [first, second];
    const body = { entries, visits: [{ visit: 'v', record: recordJson }], packs: [summary] };
    return service.call(`${AIRCRAFT}/restoration`, { method: 'PUT', body });
  }
  return { service, restore, kid };
}

const codes = async (response: Response): Promise<string[]> =>
  (await response.json<{ findings: { code: string }[] }>()).findings.map(({ code }) => code);

/** A photograph that another workshop has handed in and sealed. */
async function victimsFile(): Promise<{ bytes: Uint8Array; digest: string }> {
  const victim: TestService = await testService();
  const bytes = utf8(`a photograph with place and camera ${crypto.randomUUID()}`);
  const digest = await sha256(bytes);
  await env.BLOBS.put(`sha256/${victim.workshop}/${digest}`, bytes, { sha256: digest });
  // And where all lay together before.
  await env.BLOBS.put(`sha256/${digest}`, bytes, { sha256: digest });
  return { bytes, digest };
}

const attached = (sha: string) => ({
  ...weighingOnly,
  attachments: [{ id: 'A1', kind: 'photograph', title: 'Panel', sha256: sha }],
});

describe('a restoration with a seal of one’s own', () => {
  test('opens no file of another workshop by its digest', async () => {
    const { digest } = await victimsFile();
    const { service, restore } = await forger();
    const response = await restore({ record: attached(digest) });
    expect(response.status, await response.clone().text()).toBe(201);
    expect((await service.call(`/v1/packs/Q-WGT-P1-1/attachments/${digest}`)).status).toBe(404);
    expect(await (await service.call('/v1/packs/Q-WGT-P1-1/files')).json()).toMatchObject({ isWhole: true });
    const link = await service.call('/v1/packs/Q-WGT-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await link.json<{ url: string }>()).url);
    expect((await service.call(`${pathname}/documents/attachments/${digest}`, { key: '' })).status).toBe(404);
  });

  test('shows no file that was not brought, nor record, PDF or manifest of another by their digests', async () => {
    const { digest } = await victimsFile();
    const { restore } = await forger();
    const html = OWN_PAGE.replace('</header>', `</header><figure><img src="attachments/${digest}" alt="x"></figure>`);
    expect(await codes(await restore({ record: attached(digest), html }))).toEqual(['BLOB_MISSING']);
  });

  test('holds every document against the manifest', async () => {
    const { restore } = await forger();
    const brought = OWN_PAGE.replace('Owner’s summary', 'Maximum mass 640.0 kg');
    expect(await codes(await restore({ brought }))).toEqual(['DOCUMENT_DIFFERS']);
    const documents = JSON.stringify([
      { id: 'owner-summary', title: 'Summary', html: OWN_PAGE },
      { id: 'cover', title: 'Cover', html: OWN_PAGE },
    ]);
    expect(await codes(await restore({ documents }))).toEqual(['DOCUMENT_DIFFERS']);
    const twice = JSON.stringify(Array(2).fill({ id: 'owner-summary', title: 'Summary', html: OWN_PAGE }));
    expect(await codes(await restore({ documents: twice }))).toEqual(['DOCUMENT_DIFFERS']);
  });

  test.each([
    ['pack', { pack: 'Q-WGT-P9-1' }],
    ['issue', { issue: '7' }],
    ['visit', { visit: 'other' }],
    ['issuedAt', { issuedAt: '2020-01-01T00:00:00.000Z' }],
    ['record', { record: { sha256: 'f'.repeat(64) } }],
    ['previous', { previous: { pack: 'Q-WGT-P0-1', manifestSha256: 'f'.repeat(64) } }],
    ['supersedes', { supersedes: 'Q-WGT-P1-0' }],
    ['registration', { registration: 'Q-OTH' }],
    ['facts', { facts: { sha256: 'f'.repeat(64) } }],
  ])('holds the %s of the manifest against the chain', async (_, manifest) => {
    const { restore } = await forger();
    expect(await codes(await restore({ manifest }))).toEqual(['MANIFEST_DIFFERS']);
  });

  test.each([
    ['<meta http-equiv="refresh" content="0;url=https://elsewhere.example">'],
    ['<script src="/assets/workshop.js"></script>'],
    ['<p onclick="alert(1)">x</p>'],
    ['<p style="display:none">x</p>'],
    ['<a href="https://elsewhere.example">x</a>'],
    ['<a href="javascript:alert(1)">x</a>'],
    ['<img src="https://elsewhere.example/x.png" alt="x">'],
    ['<img src="attachments/../x" alt="x">'],
    ['<iframe src="/"></iframe>'],
    ['<form action="/"><input name="x"></form>'],
    ['<svg><image href="https://elsewhere.example/x.png"></image></svg>'],
    ['<!-- > <script>1</script> -->'],
    ['</article><script>1</script><article id="y" lang="en">'],
  ])('lets no markup through but that of our templates: %s', async (foreign) => {
    const { restore } = await forger();
    const html = OWN_PAGE.replace('</header>', `</header><section>${foreign}</section>`);
    expect(await codes(await restore({ html }))).toEqual(['DOCUMENT_FOREIGN']);
  });

  test('is refused where a file is not of its form', async () => {
    const { restore } = await forger();
    for (const forged of [
      { documents: 'no JSON' },
      { documents: '{"a":1}' },
      { documents: '[{"id":1}]' },
      { manifest: { documents: 'none' } },
      { manifest: { format: 'slipmark-manifest/9' } },
    ])
      expect(await codes(await restore(forged)), JSON.stringify(forged)).toEqual(['FILE_NOT_READABLE']);
  });

  test('shows of a pack what its manifest and record say, not what came with it', async () => {
    const { service, restore } = await forger();
    const summary = {
      releasedBy: 'Somebody Else',
      regime: 'easa',
      emptyMassKg: 111,
      findings: { cautions: 9, notes: 9 },
    };
    expect((await restore({ summary })).status).toBe(201);
    const pack = await (await service.call('/v1/packs/Q-WGT-P1-1')).json<{ emptyMassKg: number }>();
    expect(pack).toMatchObject({ releasedBy: 'Rufus Tallant', regime: 'generic', findings: { cautions: 0, notes: 0 } });
    // 749.83 lb: the empty mass that the record of the example comes to.
    expect(pack.emptyMassKg / 0.45359237).toBeCloseTo(749.83, 2);
  });

  test('leaves nothing that was brought and not taken over, and nothing at all where it is refused', async () => {
    const stray = utf8('stray');
    const { service, restore } = await forger();
    const keysUnder = async (prefix: string) => (await env.BLOBS.list({ prefix })).objects.map(({ key }) => key);
    await restore({ documents: 'no JSON', more: [stray] });
    expect(await keysUnder(`sha256/${service.workshop}/`)).toEqual([]);
    expect((await restore({ more: [stray] })).status).toBe(201);
    expect(await keysUnder(`staged/${service.workshop}/`)).toEqual([]);
    const kept = await keysUnder(`sha256/${service.workshop}/`);
    expect(kept).toHaveLength(4);
    expect(kept).not.toContain(`sha256/${service.workshop}/${await sha256(stray)}`);
  });
});

/** A limitation that the next visit has to answer for. */
const LIMITED = {
  ...weighingOnly,
  release: { ...weighingOnly.release, limitations: ['No spins: rudder cable worn'] },
};

/** Facts as a service of ours would have made them of a record, with what stands open after the pack left out. */
async function honestFacts(record: unknown, kid: string, workshop: string) {
  const outcome = await pipeline.assess(record, AT);
  if (!outcome.ok) throw new Error('The record must be read');
  const { visit, results } = outcome.assessed;
  const recordSha256 = await sha256(canonicalJson(record));
  const over = await pipeline.openDigest([{ pack: 'Q-WGT-P1-1', issuedAt: AT, recordSha256, isWithdrawn: false }]);
  return {
    format: 'slipmark-facts/1',
    summary: {
      ...{ registration: 'Q-WGT', pack: 'Q-WGT-P1-1', number: 1, issue: 1, visit: 'v', issuedAt: AT, supersedes: null },
      ...{ releasedBy: 'Rufus Tallant', regime: 'generic', findings: { cautions: 0, notes: 0 } },
      emptyMassKg: results.schedule?.massKg ?? null,
      emptyArmMm: results.schedule?.armMm ?? null,
    },
    sealedBy: { id: workshop, name: 'A Famous Workshop', kid } as object | null,
    owner: ownerFacts(visit, results, AT) as object,
    open: { over, items: [] as unknown, readings: { meters: [] } } as unknown,
  };
}

type Facts = Awaited<ReturnType<typeof honestFacts>>;

describe('the facts of a pack that is restored', () => {
  async function restoring(change: (facts: Facts) => unknown) {
    const { service, restore, kid } = await forger();
    const facts = change(await honestFacts(LIMITED, kid, service.workshop));
    return { service, response: await restore({ record: LIMITED, facts }) };
  }

  test('may leave nothing out of what stands open, nor name another workshop on the owner’s page', async () => {
    const { service, response } = await restoring((facts) => facts);
    expect(response.status, await response.clone().text()).toBe(201);
    const due = await (await service.call(`${AIRCRAFT}/due`)).json<{ limitations: { text: string }[] }>();
    expect(due.limitations.map(({ text }) => text)).toEqual(['No spins: rudder cable worn']);
    const next = await keep(service, weighingOnly as unknown as SmallRecord, `${AIRCRAFT}/visits/next`);
    const { findings } = await next.json<{ findings: { code: string }[] }>();
    expect(findings.map(({ code }) => code)).toContain('OPEN_ITEM_UNANSWERED');
    const made = await service.call('/v1/packs/Q-WGT-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await made.json<{ url: string }>()).url);
    const page = await (await service.call(pathname, { key: '' })).text();
    expect(page).toContain(`Sealed by Test (${service.workshop})`);
    expect(page).not.toContain('A Famous Workshop');
  });

  const summary = (changed: object) => (facts: Facts) => ({ ...facts, summary: { ...facts.summary, ...changed } });

  test.each([
    ['another pack', summary({ pack: 'Q-VIC-P1-1' })],
    ['a path for a pack', summary({ pack: '../../x' })],
    ['another registration', summary({ registration: 'Q-VIC' })],
    ['another issue', summary({ issue: 7 })],
    ['another visit', summary({ visit: 'w' })],
    ['another moment', summary({ issuedAt: '2026-11-11T12:00:00.000Z' })],
    ['another person', summary({ releasedBy: 'Somebody Else' })],
    ['another regime', summary({ regime: 'easa' })],
    ['another empty mass', summary({ emptyMassKg: 111 })],
    ['no empty mass', summary({ emptyMassKg: null })],
    ['another arm', summary({ emptyArmMm: 1 })],
    ['another workshop', (facts: Facts) => ({ ...facts, sealedBy: { ...facts.sealedBy, id: 'another' } })],
    ['another key', (facts: Facts) => ({ ...facts, sealedBy: { ...facts.sealedBy, kid: 'another' } })],
  ])('are refused where they name %s', async (_, change) => {
    expect(new Set(await codes((await restoring(change)).response))).toEqual(new Set(['FACTS_DIFFER']));
  });

  test.each([
    ['nothing', () => ({})],
    ['no object', () => 7],
    ['no list of open items', (facts: Facts) => ({ ...facts, open: {} })],
    [
      'an open item that is none',
      (facts: Facts) => ({ ...facts, open: { over: '', items: [null], readings: { meters: [] } } }),
    ],
    [
      'an open item without words',
      (facts: Facts) => ({ ...facts, open: { over: '', items: [{ id: 'F1' }], readings: { meters: [] } } }),
    ],
    ['no meters', (facts: Facts) => ({ ...facts, open: { over: '', items: [] } })],
    ['limits that are none', (facts: Facts) => ({ ...facts, owner: { limits: 'none', due: [], loading: null } })],
    ['loadings that are none', (facts: Facts) => ({ ...facts, owner: { limits: [], due: [], loading: {} } })],
    ['more in the summary than belongs there', summary({ html: '<p>x</p>' })],
  ])('are refused where they have %s', async (_, change) => {
    expect(await codes((await restoring(change)).response)).toEqual(['FILE_NOT_READABLE']);
  });

  test.each([
    ['{}', {}],
    ['null', null],
    ['odd members', { open: { over: 7, items: [null] }, owner: 'none', sealedBy: 7 }],
    ['odd items', { open: { items: [null] }, owner: { limits: [null], due: 7 } }],
  ])('stop no answer where they were restored before they were looked into: %s', async (_, facts) => {
    const { service, response } = await restoring((honest) => honest);
    expect(response.status).toBe(201);
    const text = utf8(JSON.stringify(facts));
    await env.BLOBS.put(`sha256/${service.workshop}/${await sha256(text)}`, text);
    const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${service.workshop}/Q-WGT`));
    const statement = 'UPDATE packs SET isRestored = 0, factsSha256 = ?';
    const digest = await sha256(text);
    await runInDurableObject(ledger, (_, { storage }) => void storage.sql.exec(statement, digest));
    expect((await service.call(`${AIRCRAFT}/due`)).status).toBe(200);
    const next = `${AIRCRAFT}/visits/next`;
    expect((await keep(service, weighingOnly as unknown as SmallRecord, next)).status).toBe(201);
    const made = await service.call('/v1/packs/Q-WGT-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await made.json<{ url: string }>()).url);
    expect((await service.call(pathname, { key: '' })).status).toBe(200);
  });
});

/** Makes of a pack that was restored what the first edition made of it: its files lie where those of all workshops lay. */
async function asOfFirstEdition({ workshop }: TestService): Promise<void> {
  const prefix = `sha256/${workshop}/`;
  for (const { key } of (await env.BLOBS.list({ prefix })).objects) {
    const bytes = (await (await env.BLOBS.get(key))?.bytes()) ?? new Uint8Array();
    await env.BLOBS.put(`sha256/${key.slice(prefix.length)}`, bytes);
    await env.BLOBS.delete(key);
  }
  const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${workshop}/Q-WGT`));
  await runInDurableObject(ledger, (_, { storage }) => void storage.sql.exec('UPDATE packs SET isShared = 1'));
}

describe('a restoration of the first edition, with a seal of one’s own', () => {
  const PACK = '/v1/packs/Q-WGT-P1-1';

  async function forgedThen() {
    const victim = await victimsFile();
    const { service, restore } = await forger();
    const record = attached(victim.digest);
    expect((await restore({ record })).status).toBe(201);
    await asOfFirstEdition(service);
    // The first edition let documents show what was not brought.
    const html = OWN_PAGE.replace(
      '</header>',
      `</header><figure><img src="attachments/${victim.digest}" alt="x"></figure>`,
    );
    const documents = utf8(JSON.stringify([{ id: 'owner-summary', title: 'Summary', html }]));
    const documentsSha256 = await sha256(documents);
    await env.BLOBS.put(`sha256/${documentsSha256}`, documents);
    const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${service.workshop}/Q-WGT`));
    await runInDurableObject(
      ledger,
      (_, { storage }) => void storage.sql.exec('UPDATE packs SET documentsSha256 = ?', documentsSha256),
    );
    return { service, victim, record };
  }

  test('opens no file of another: neither with an address of the pack nor by a link', async () => {
    const { service, victim } = await forgedThen();
    const made = await service.call(`${PACK}/links`, { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await made.json<{ url: string }>()).url);
    const before = [`${PACK}/attachments/${victim.digest}`, `${PACK}/record.json`, `${PACK}/pack.pdf`];
    for (const path of [...before, `${pathname}/documents/attachments/${victim.digest}`])
      expect((await service.call(path)).status, path).toBe(500);
    // Nor once its own files are there again.
    for (const { name, sha256: digest } of await filesOf(service)) {
      const bytes = (await (await env.BLOBS.get(`sha256/${digest}`))?.bytes()) ?? new Uint8Array();
      if (name !== 'attachment') await service.call(`${PACK}/files/${digest}`, { method: 'PUT', body: bytes });
    }
    expect((await service.call(`${PACK}/record.json`)).status).toBe(200);
    for (const path of [`${PACK}/attachments/${victim.digest}`, `${pathname}/documents/attachments/${victim.digest}`])
      expect((await service.call(path)).status, path).toBeGreaterThanOrEqual(400);
  });

  test('has its files again once they are brought again: each is said to be missing, with what to do', async () => {
    const { service, restore } = await forger();
    expect((await restore({})).status).toBe(201);
    await asOfFirstEdition(service);
    const answer = await service.call(`${PACK}/record.json`);
    expect(await answer.json()).toMatchObject({
      type: '/problems/damaged',
      detail: expect.stringContaining('slipmark import'),
    });
    const files = await filesOf(service);
    expect(files.map(({ name, state }) => `${name} ${state}`)).toEqual(
      ['pack.pdf', 'record.json', 'manifest.json', 'documents.json'].map((name) => `${name} missing`),
    );
    for (const { sha256: digest } of files) {
      const body = (await (await env.BLOBS.get(`sha256/${digest}`))?.bytes()) ?? new Uint8Array();
      expect((await service.call(`${PACK}/files/${digest}`, { method: 'PUT', body })).status).toBe(200);
    }
    expect(await (await service.call(`${PACK}/files`)).json()).toMatchObject({ isWhole: true });
    expect((await service.call(`${PACK}/record.json`)).status).toBe(200);
  });
});

test('a pack of the first edition that was sealed by a key made here is read where all files lay together', async () => {
  const { service, restore } = await forger();
  expect((await restore({})).status).toBe(201);
  const own = '/v1/aircraft/Q-WGT/visits/own';
  await keep(service, weighingOnly as unknown as SmallRecord, own);
  const assessment = await service.call(`${own}/assessment`);
  const headers = { 'If-Match': assessment.headers.get('ETag') ?? '' };
  const body = { by: 'rufus', knowsOfNoHazard: true };
  const released = await service.call(`${own}/release`, { method: 'POST', body, headers });
  expect(released.status, await released.clone().text()).toBe(201);
  await asOfFirstEdition(service);
  for (const file of ['pack.pdf', 'record.json', 'manifest.json', 'documents.json']) {
    expect((await service.call(`/v1/packs/Q-WGT-P2-1/${file}`)).status, file).toBe(200);
    expect((await service.call(`/v1/packs/Q-WGT-P1-1/${file}`)).status, file).toBe(500);
  }
});

interface FileState {
  name: string;
  sha256: string;
  state: string;
}

const filesOf = async ({ call }: TestService): Promise<FileState[]> =>
  (await (await call('/v1/packs/Q-WGT-P1-1/files')).json<{ files: FileState[] }>()).files;
