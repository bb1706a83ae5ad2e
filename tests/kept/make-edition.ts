// node tests/kept/make-edition.ts NAME: what this very code makes, kept in fixtures/kept/NAME. Later code must go on reading it, so a
// folder that was committed is never made anew.
import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Slipmark, slipmark, type VisitRecord } from '../../worker/client/client.ts';
import { bundle } from '../../worker/embedded/bundle.ts';
import { startEmbedded } from '../../worker/embedded/embedded.ts';
import { exampleVisit, withRegistration } from '../../worker/embedded/example-visit.ts';
import { filesIn } from '../../worker/embedded/files-in.ts';
import { freePort } from '../../worker/embedded/free-port.ts';
import { exportFolder } from '../../worker/embedded/moving/export-folder.ts';
import { ROOT } from '../../worker/embedded/places.ts';
import { EDITIONS, type Edition, type KeptLink, SECRETS, WORKSHOP } from './edition.ts';

/** As long as a link may live. */
const LINK_DAYS = 3_660;

const NOW = new Date();

async function make(name: string): Promise<void> {
  const folder = join(EDITIONS, name);
  if (existsSync(folder)) throw new Error(`${folder} is there already, and is not to be made anew`);
  const storage = mkdtempSync(join(tmpdir(), 'slipmark-edition-'));
  const service = await startEmbedded({ script: await bundle(), storage, port: await freePort(19_587), ...SECRETS });
  const { origin } = service;
  const created = await slipmark({ origin, key: SECRETS.adminSecret }).createWorkshop({ body: WORKSHOP });
  const key = created.body.key.secret;
  const links = await fill(slipmark({ origin, key }));
  const person = { label: 'phone of Jonas', scopes: ['records', 'release'], person: 'jonas' } as const;
  const made = await slipmark({ origin, key }).makeKey({ body: { ...person, scopes: [...person.scopes] } });
  await exportFolder(slipmark({ origin, key }), join(folder, 'export'));
  await service.stop();
  const isStorage = (path: string): boolean => !/service\.log$|\/lock$|-shm$/.test(path);
  cpSync(storage, join(folder, 'storage'), { recursive: true, filter: isStorage });
  const edition: Edition = { madeAt: NOW.toISOString(), key, keyOfJonas: made.body.secret, links };
  writeFileSync(join(folder, 'edition.json'), `${JSON.stringify(edition, null, 2)}\n`);
  rmSync(storage, { recursive: true, force: true });
}

/** Every example and a German one; a second issue, a second visit, a withdrawal, and links of every kind. */
async function fill(client: Slipmark): Promise<KeptLink[]> {
  const { files, facts } = await filesIn(join(ROOT, 'fixtures/attachments'));
  for (const [sha256, body] of Object.entries(files))
    if (facts[sha256]?.ok) await client.putAttachment({ sha256, body });
  const links: KeptLink[] = [];
  const link = async (pack: string, audience: KeptLink['audience'], headline: KeptLink['headline']) => {
    const { body } = await client.makeLink({ pack, body: { audience, days: LINK_DAYS } });
    links.push({ path: new URL(body.url).pathname, pack, audience, headline });
    return body.link;
  };

  const demo = exampleVisit('nose-wheel-full', NOW);
  await release(client, 'Q-SLM', '2026-11', demo);
  await link('Q-SLM-P1-1', 'owner', 'Superseded');
  const { body: baseline } = await client.getBaseline({ pack: 'Q-SLM-P1-1' });
  await release(client, 'Q-SLM', 'weighed-again', weighedAgain(demo, baseline as VisitRecord['baseline']));
  await link('Q-SLM-P2-1', 'owner', 'Released');
  await link('Q-SLM-P2-1', 'inspector', 'Released');

  await release(client, 'Q-TRN', 'fifty-hours', exampleVisit('trike', NOW));
  await link('Q-TRN-P1-1', 'owner', 'Released');

  const weighing = exampleVisit('weighing-only', NOW);
  await release(client, 'Q-WGT', 'weighing', weighing);
  const workshop = { ...weighing.workshop, contact: 'weighing@harrow-creek.example' };
  await release(client, 'Q-WGT', 'weighing', { ...weighing, workshop });
  await link('Q-WGT-P1-1', 'owner', 'Released');
  const revoked = await link('Q-WGT-P1-2', 'owner', null);
  await client.revokeLink({ pack: 'Q-WGT-P1-2', link: revoked });

  await release(client, 'Q-PBL', 'radio', exampleVisit('computed-only', NOW));
  await link('Q-PBL-P1-1', 'owner', 'Withdrawn');
  const withdrawal = { by: 'Piet Lunde', reason: 'The moment of the radio was taken from another tray' };
  await client.withdrawPack({ pack: 'Q-PBL-P1-1', body: withdrawal });

  const german = withRegistration(exampleVisit('nose-wheel-full', NOW), 'Q-DEU');
  await release(client, 'Q-DEU', '2026-11', { ...german, workshop: { ...german.workshop, language: 'de' } });
  await link('Q-DEU-P1-1', 'owner', 'Freigegeben');

  await client.putVisit({
    registration: 'Q-OPN',
    visit: 'open',
    body: withRegistration(exampleVisit('weighing-only', NOW), 'Q-OPN'),
  });
  return links;
}

async function release(client: Slipmark, registration: string, visit: string, body: VisitRecord): Promise<void> {
  const at = { registration, visit };
  const kept = await client.getVisit(at).then(
    ({ etag }) => etag,
    () => undefined,
  );
  await client.putVisit({ ...at, body, ...(kept !== undefined && { ifMatch: kept }) });
  const { etag, body: assessment } = await client.getAssessment(at);
  const points = assessment.findings.filter(({ severity }) => severity !== 'note');
  const by = body.release?.by ?? '';
  await client.releaseVisit({ ...at, body: { by, knowsOfNoHazard: true }, ifMatch: etag }).catch((error: unknown) => {
    throw new Error(`Cannot release ${registration}: ${JSON.stringify(points, null, 2)}`, { cause: error });
  });
}

/** The demo aircraft, weighed once more; nothing else was done. */
function weighedAgain(record: VisitRecord, baseline: VisitRecord['baseline']): VisitRecord {
  const { schemaVersion, units, workshop, visit, people, aircraft, weighing } = record;
  const minutesAgo = (minutes: number): string => new Date(NOW.getTime() - minutes * 60_000).toISOString();
  const statement = { by: 'jonas', statement: 'weighing-only', scope: 'The second weighing alone.' };
  return {
    schemaVersion,
    units,
    workshop,
    visit: {
      ...visit,
      arrivedAt: minutesAgo(9),
      workEndedAt: minutesAgo(2),
      summary: 'Weighed once more; nothing else was done.',
    },
    people,
    aircraft,
    ...(baseline && { baseline }),
    ...(weighing && { weighing: { ...weighing, weighedAt: minutesAgo(6) } }),
    release: statement,
  };
}

const [name] = process.argv.slice(2);
if (!name) throw new Error('Name the edition: node tests/kept/make-edition.ts NAME');
await make(name);
