import { brokenEntry } from '../../archive/ledger/chain.ts';
import { allItems, ifThere, type Slipmark, SlipmarkProblem } from '../../client/client.ts';
import { digestOf } from './folder.ts';

export interface Scrubbed {
  aircraft: number;
  /** Files that were read, packs' and handed-in ones. */
  files: number;
  /** Everything that is not as it was kept, each in a sentence. */
  damaged: string[];
}

/** Reads everything that a workshop has, and holds it against what was kept: chains, files of packs, files of visits. */
export async function scrub(client: Slipmark, onProgress: (line: string) => void): Promise<Scrubbed> {
  const found: Scrubbed = { aircraft: 0, files: 0, damaged: [] };
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
  const broken = await brokenEntry(await allItems(client.listLedger, { registration }));
  if (broken) found.damaged.push(`entry ${broken.seq} of the chain of ${registration}`);
  for (const { pack, pdfSha256 } of await allItems(client.listAircraftPacks, { registration })) {
    const { body } = await client.checkPackFiles({ pack });
    found.files += body.files.length;
    for (const { name, sha256, state } of body.files)
      if (state !== 'whole') found.damaged.push(`${name} of ${pack} (${sha256}) is ${state}`);
    // Whoever has the file asks after it by its digest alone.
    const asked = await client.verify({ body: { pdfSha256 } });
    if (asked.body.pack !== pack)
      found.damaged.push(`the way from the file of ${pack} to its ledger is missing: slipmark relist makes it anew`);
  }
  for (const { visit } of await allItems(client.listVisits, { registration })) {
    const kept = await ifThere(client.getVisit({ registration, visit }));
    for (const { sha256, title } of kept?.body.attachments ?? [])
      await noteDamage(found, `“${title}” of visit ${visit} of ${registration} (${sha256})`, async () => {
        const file = await ifThere(client.getAttachmentFile({ sha256 }));
        if (file) found.files += 1;
        if (file && digestOf(file.body) !== sha256) found.damaged.push(`“${title}” (${sha256}) is another file`);
      });
  }
}

/** Notes what the service says is damaged; whatever else goes wrong ends the reading. */
async function noteDamage(found: Scrubbed, what: string, read: () => Promise<void>): Promise<void> {
  try {
    await read();
  } catch (error) {
    if (!(error instanceof SlipmarkProblem) || error.type !== '/problems/damaged') throw error;
    found.damaged.push(`${what} is damaged`);
  }
}
