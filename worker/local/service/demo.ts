import { join } from 'node:path';
import { ifThere, type Slipmark, slipmark } from '../../client/client.ts';
import { exampleVisit } from './example-visit.ts';
import { filesIn } from './files-in.ts';
import type { Memory } from './memory.ts';
import { ROOT } from './places.ts';

const WORKSHOP = { id: 'demo', name: 'Demo workshop' };
const VISIT = 'avionics-and-service';

/**
 * Creates the demo in a running service over HTTP, as any client would: workshop, visit, release, owner's link. Steps
 * that were taken at an earlier start are skipped.
 *
 * @param keep called after each step with the memory to store
 * @returns memory in which key, ownerPath and pack are set
 */
export async function putDemo(origin: string, memory: Memory, keep: (memory: Memory) => void) {
  const key = memory.key ?? (await createWorkshop(origin, memory.adminSecret));
  keep({ ...memory, key });
  const client = slipmark({ origin, key });
  const pack = memory.pack ?? (await releaseDemo(client));
  keep({ ...memory, key, pack });
  const ownerPath = memory.ownerPath ?? (await linkTo(client, pack));
  const complete = { ...memory, key, pack, ownerPath };
  keep(complete);
  return complete;
}

async function createWorkshop(origin: string, adminSecret: string): Promise<string> {
  const { body } = await slipmark({ origin, key: adminSecret }).createWorkshop({ body: WORKSHOP });
  return body.key.secret;
}

async function releaseDemo(client: Slipmark): Promise<string> {
  const example = exampleVisit('nose-wheel-full', new Date());
  await uploadFiles(client);
  const visit = { registration: example.aircraft.registration, visit: VISIT };
  // An interrupted start may have kept it, on another day; a new issue states its reason.
  const before = await ifThere(client.getVisit(visit));
  const record = before ? begunAgain(example) : example;
  await client.putVisit({ ...visit, body: record, ...(before && { ifMatch: before.etag }) });
  const { etag } = await client.getAssessment(visit);
  const body = { by: record.release?.by ?? '', knowsOfNoHazard: true };
  const released = await client.releaseVisit({ ...visit, body, ifMatch: etag });
  return released.body.pack;
}

function begunAgain({ release, ...record }: ReturnType<typeof exampleVisit>): ReturnType<typeof exampleVisit> {
  const reasonForIssue = `Demo begun again, work ended ${record.visit.workEndedAt ?? ''}`;
  return { ...record, ...(release && { release: { ...release, reasonForIssue } }) };
}

/** Uploads the files that the demo record names. */
async function uploadFiles(client: Slipmark): Promise<void> {
  const { files, facts } = await filesIn(join(ROOT, 'fixtures/attachments'));
  for (const [sha256, body] of Object.entries(files))
    if (facts[sha256]?.ok) await client.putAttachment({ sha256, body });
}

async function linkTo(client: Slipmark, pack: string): Promise<string> {
  const { body } = await client.makeLink({ pack, body: { audience: 'owner' } });
  return new URL(body.url).pathname;
}

/**
 * Downloads the sealed PDF.
 *
 * @returns the bytes of the sealed PDF
 */
export async function pdfOf(origin: string, { key = '', pack = '' }: Memory): Promise<Uint8Array> {
  return (await slipmark({ origin, key }).getPackPdf({ pack })).body;
}
