import {
  allItems,
  ifThere,
  type Pack,
  refusalOf,
  type Slipmark,
  SlipmarkProblem,
  type VisitState,
} from '../../client/client.ts';
import { replay } from '../../edge/archive/ledger/replay.ts';
import { unlikeChain } from './beside-chain.ts';
import { digestOf } from './folder.ts';
import { unlikeSeal } from './unlike-seal.ts';

export interface Scrubbed {
  aircraft: number;
  /** Number of files read, of packs and uploads. */
  files: number;
  /** Damaged items, each in a sentence. */
  damaged: string[];
}

/** Reads everything that a workshop has, and checks it: chains, records, packs, files of both. */
export async function scrub(client: Slipmark, onProgress: (line: string) => void): Promise<Scrubbed> {
  const found: Scrubbed = { aircraft: 0, files: 0, damaged: [] };
  const { workshop } = (await client.listAircraft({ limit: 1 })).body;
  await noteDamage(found, 'the table of people', async () => void (await client.listPeople()));
  await noteDamage(found, 'a seal key of the workshop', async () => void (await client.getSealKeys({ workshop })));
  for (const key of await keysOf(client))
    if (key.scopes.length === 0 && key.revokedAt === null)
      found.damaged.push(`the rights of the key ${key.key} are damaged: revoke it and make another`);
  const aircraft = await allItems(client.listAircraft, {});
  for (const [index, { registration }] of aircraft.entries()) {
    onProgress(`Reading ${registration}, ${index + 1} of ${aircraft.length}`);
    await noteDamage(found, `the ledger of ${registration}`, () => scrubAircraft(client, registration, found));
  }
  return found;
}

async function scrubAircraft(client: Slipmark, registration: string, found: Scrubbed): Promise<void> {
  if (!(await ifThere(client.getAircraft({ registration })))) return;
  found.aircraft += 1;
  const packs = await allItems(client.listAircraftPacks, { registration });
  const visits = await allItems(client.listVisits, { registration });
  await scrubChain(client, { registration, packs, visits }, found);
  for (const pack of packs) await scrubPack(client, pack, found);
  for (const { visit } of visits)
    await noteDamage(found, `the record of visit ${visit} of ${registration}`, async () => {
      const kept = await ifThere(client.getVisit({ registration, visit }));
      for (const attachment of kept?.body.attachments ?? [])
        await scrubAttachment(client, { ...attachment, of: `visit ${visit} of ${registration}` }, found);
    });
}

/** Returns the keys of the workshop, if this key may see them. */
async function keysOf(client: Slipmark) {
  const listed = client.listKeys();
  return (await refusalOf(listed, 403)) ? [] : (await listed).body.items;
}

/** Visits and packs of a ledger, which must match its chain. */
interface Ledger {
  registration: string;
  packs: Pack[];
  visits: VisitState[];
}

async function scrubChain(client: Slipmark, { registration, packs, visits }: Ledger, found: Scrubbed): Promise<void> {
  const outcome = await replay(registration, await allItems(client.listLedger, { registration }));
  if (!outcome.ok) {
    const { seq, why } = outcome.fault;
    found.damaged.push(`entry ${seq} of the chain of ${registration}: ${why}`);
    return;
  }
  for (const name of unlikeChain(visits, packs, outcome.replay))
    found.damaged.push(`${name} of ${registration} is not what the chain says`);
}

async function scrubPack(client: Slipmark, answered: Pack, found: Scrubbed): Promise<void> {
  const { pack, pdfSha256 } = answered;
  const { body } = await client.checkPackFiles({ pack });
  found.files += body.files.length;
  for (const { name, sha256, state } of body.files)
    if (state !== 'whole') found.damaged.push(`${name} of ${pack} (${sha256}) is ${state}`);
  if (body.isWhole)
    for (const member of await unlikeSeal(client, answered))
      found.damaged.push(
        `${member} in the list of packs of the aircraft is not what ${pack} was sealed with: ${REINDEX}`,
      );
  // Anyone with the file verifies it by its digest only.
  await noteDamage(found, `the way from the file of ${pack} to its ledger (${REINDEX})`, async () => {
    const asked = await client.verify({ body: { pdfSha256 } });
    if (asked.body.pack !== pack)
      found.damaged.push(`the way from the file of ${pack} to its ledger is missing: ${REINDEX}`);
  });
}

const REINDEX = 'slipmark reindex restores it';

async function scrubAttachment(
  client: Slipmark,
  { sha256, title, of }: { sha256: string; title: string; of: string },
  found: Scrubbed,
): Promise<void> {
  await noteDamage(found, `“${title}” of ${of} (${sha256})`, async () => {
    const file = await ifThere(client.getAttachmentFile({ sha256 }));
    if (file) found.files += 1;
    if (file && digestOf(file.body) !== sha256) found.damaged.push(`“${title}” (${sha256}) is another file`);
  });
}

/** Records damage that the service reports; any other error stops the reading. */
async function noteDamage(found: Scrubbed, what: string, read: () => Promise<void>): Promise<void> {
  try {
    await read();
  } catch (error) {
    if (!(error instanceof SlipmarkProblem) || error.type !== '/problems/damaged') throw error;
    found.damaged.push(`${what} is damaged`);
  }
}
