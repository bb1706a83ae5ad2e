import { join } from 'node:path';
import type { DueList, Slipmark, VisitRecord } from '../../worker/client/client.ts';
import { exampleVisit, withRegistration } from '../../worker/local/service/example-visit.ts';
import { filesIn } from '../../worker/local/service/files-in.ts';
import { ROOT } from '../../worker/local/service/places.ts';
import type { KeptLink } from './edition.ts';

/** As long as a link may live. */
const LINK_DAYS = 3_660;

/** Every example and a German one; a second issue, a second visit, a withdrawal, links of every kind, and a table of people. */
export async function fillEdition(client: Slipmark, now: Date): Promise<KeptLink[]> {
  const { files, facts } = await filesIn(join(ROOT, 'fixtures/attachments'));
  for (const [sha256, body] of Object.entries(files))
    if (facts[sha256]?.ok) await client.putAttachment({ sha256, body });
  const links: KeptLink[] = [];
  const link = async (pack: string, audience: KeptLink['audience'], headline: KeptLink['headline']) => {
    const { body } = await client.makeLink({ pack, body: { audience, days: LINK_DAYS } });
    links.push({ path: new URL(body.url).pathname, pack, audience, headline });
    return body.link;
  };

  const demo = exampleVisit('nose-wheel-full', now);
  await release(client, 'Q-SLM', '2026-11', demo);
  await link('Q-SLM-P1-1', 'owner', 'Superseded');
  const { body: baseline } = await client.getBaseline({ pack: 'Q-SLM-P1-1' });
  const { body: due } = await client.getDue({ registration: 'Q-SLM' });
  await release(client, 'Q-SLM', 'weighed-again', weighedAgain(demo, { baseline, due, now }));
  await link('Q-SLM-P2-1', 'owner', 'Released');
  await link('Q-SLM-P2-1', 'inspector', 'Released');

  await release(client, 'Q-TRN', 'fifty-hours', exampleVisit('trike', now));
  await link('Q-TRN-P1-1', 'owner', 'Released');

  const weighing = exampleVisit('weighing-only', now);
  await release(client, 'Q-WGT', 'weighing', weighing);
  const workshop = { ...weighing.workshop, contact: 'weighing@harrow-creek.example' };
  const reasonForIssue = 'Name of the workshop corrected';
  const corrected = weighing.release && { ...weighing.release, reasonForIssue };
  await release(client, 'Q-WGT', 'weighing', { ...weighing, workshop, release: corrected });
  await link('Q-WGT-P1-1', 'owner', 'Released');
  const revoked = await link('Q-WGT-P1-2', 'owner', null);
  await client.revokeLink({ pack: 'Q-WGT-P1-2', link: revoked });

  await release(client, 'Q-PBL', 'radio', exampleVisit('computed-only', now));
  await link('Q-PBL-P1-1', 'owner', 'Withdrawn');
  const withdrawal = { by: 'Piet Lunde', reason: 'The moment of the radio was taken from another tray' };
  await client.withdrawPack({ pack: 'Q-PBL-P1-1', body: withdrawal });

  const german = withRegistration(exampleVisit('nose-wheel-full', now), 'Q-DEU');
  await release(client, 'Q-DEU', '2026-11', { ...german, workshop: { ...german.workshop, language: 'de' } });
  await link('Q-DEU-P1-1', 'owner', 'Freigegeben');

  await client.putVisit({
    registration: 'Q-OPN',
    visit: 'open',
    body: withRegistration(exampleVisit('weighing-only', now), 'Q-OPN'),
  });
  for (const person of demo.people) await enter(client, person);
  return links;
}

/** Into the table of people; last of all, for from then on nobody else releases. */
async function enter(client: Slipmark, person: VisitRecord['people'][number]): Promise<void> {
  const { id, name, capacity, authorisation: licence = null, scope = [], validUntil: until = null } = person;
  await client.putPerson({ person: id, body: { name, capacity, licence, scope, until } });
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

/** The demo aircraft, weighed once more; nothing else was done, and what stood open stands on. */
function weighedAgain(
  record: VisitRecord,
  { baseline, due, now }: { baseline: unknown; due: DueList; now: Date },
): VisitRecord {
  const { schemaVersion, units, workshop, visit, people, aircraft, certificates, meters, weighing } = record;
  const readings = meters?.readings.map((meter) => ({ ...meter, inHours: meter.outHours }));
  const minutesAgo = (minutes: number): string => new Date(now.getTime() - minutes * 60_000).toISOString();
  const { items, deferred, watched, limitations, flightTests } = due;
  const open = [...items, ...deferred, ...watched, ...limitations, ...flightTests];
  const repeated = { answer: 'repeated', by: 'jonas', at: minutesAgo(4) } as const;
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
    ...(certificates && { certificates }),
    ...(readings && { meters: { readings } }),
    baseline: baseline as NonNullable<VisitRecord['baseline']>,
    ...(weighing && { weighing: { ...weighing, weighedAt: minutesAgo(6) } }),
    carried: open.map(({ openItem }) => ({ item: openItem, ...repeated })),
    release: statement,
  };
}
