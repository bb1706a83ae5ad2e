import { allItems, ifThere, refusalOf, type Slipmark, type VisitRecord } from '../../client/client.ts';
import { bytesAt, textAt } from './folder.ts';
import { type AircraftFile, filesOfPack, type LedgerFile, PLACES } from './format.ts';

export interface ImportedAircraft {
  registration: string;
  packs: number;
  /** False where this very ledger stood there before, or one that goes on from it. */
  isNew: boolean;
  /** Where something else is kept of it there, so that nothing was brought. */
  isRefused: boolean;
  /** What could not be brought along, each in a sentence. */
  remarks: string[];
}

/**
 * Brings the files of an aircraft, then its ledger, then asks whether all of it stands there as it stood. What was done before is
 * found done, so that an import that broke off is started again.
 *
 * What goes on from the ledger of the folder is left as it is, but for files that are damaged.
 *
 * @throws Error when the service refuses, or answers something else than the folder holds
 */
export async function importAircraft(
  client: Slipmark,
  folder: string,
  aircraft: AircraftFile,
  { entries }: LedgerFile,
): Promise<ImportedAircraft> {
  const { registration, packs, visits } = aircraft;
  const head = entries.at(-1)?.digest;
  // A ledger that was lost is none: bringing it back is what this is for.
  const isLost = (await refusalOf(ifThere(client.getAircraft({ registration })), 500)) !== undefined;
  const standing = isLost ? undefined : await ifThere(client.getAircraft({ registration }));
  const later = standing ? await entriesAfter(client, registration, head) : 0;
  if (later === undefined) {
    const remarks = [`${registration}: something else is kept of it there; nothing was brought`];
    return { registration, packs: 0, isNew: false, isRefused: true, remarks };
  }
  const remarks = await uploadFiles(client, folder, aircraft);
  if (later > 0) remarks.push(`${registration}: ${later} later entries stand there, which the folder does not have`);
  if (!standing) {
    for (const [sha256, path] of blobsOf(aircraft, entries))
      await client.bringBlob({ registration, sha256, body: bytesAt(folder, path) });
    const records = visits.map(({ visit }) => ({ visit, record: textAt(folder, PLACES.visit(registration, visit)) }));
    const body = { entries, visits: records, packs: packs.map(({ summary }) => summary) };
    await client.restoreLedger({ registration, body });
  }
  const records = standing ? await healRecords(client, folder, aircraft) : [];
  const healed = await healPacks(client, folder, aircraft, blobsOf(aircraft, entries));
  await proveImported(client, aircraft, entries);
  return {
    registration,
    packs: packs.length,
    isNew: !standing,
    isRefused: false,
    remarks: [...remarks, ...records, ...healed],
  };
}

/** How many entries stand after the end of the folder's chain; undefined where that is no part of what stands there. */
async function entriesAfter(client: Slipmark, registration: string, head: string | undefined) {
  const standing = await allItems(client.listLedger, { registration });
  const at = standing.findIndex(({ digest }) => digest === head);
  return at < 0 ? undefined : standing.length - at - 1;
}

/** Sends records again that are damaged there. One that was amended since is another than that of the folder, and stays as it is. */
async function healRecords(
  client: Slipmark,
  folder: string,
  { registration, visits }: AircraftFile,
): Promise<string[]> {
  const remarks: string[] = [];
  for (const { visit, recordSha256 } of visits) {
    const name = { registration, visit };
    if (!(await refusalOf(ifThere(client.getVisit(name)), 500))) continue;
    const body = bytesAt(folder, PLACES.visit(registration, visit)) as unknown as VisitRecord;
    const refused = await refusalOf(client.putVisit({ ...name, body, ifMatch: `"${recordSha256}"` }), 412);
    remarks.push(
      refused
        ? `${registration}: the record of visit ${visit} is damaged, and the folder has an earlier one: ${refused.detail}`
        : `${registration}: the record of visit ${visit} was damaged, and was brought back`,
    );
  }
  return remarks;
}

/**
 * Brings back what is damaged or missing of packs that stand there, file by file, and holds every byte against its digest. The manifest
 * names the attachments, so it comes before them.
 */
async function healPacks(
  client: Slipmark,
  folder: string,
  { registration, packs }: AircraftFile,
  blobs: ReadonlyMap<string, string>,
): Promise<string[]> {
  const remarks: string[] = [];
  for (const { pack } of packs.map(({ summary }) => summary)) {
    for (let rounds = 0; ; rounds++) {
      const { body } = await client.checkPackFiles({ pack });
      if (body.isWhole) break;
      if (rounds === MAX_ROUNDS) throw new Error(`Import of ${registration} failed: files of ${pack} stay damaged`);
      for (const { name, sha256 } of body.files.filter(({ state }) => state !== 'whole')) {
        const path = blobs.get(sha256);
        if (path === undefined)
          throw new Error(`Import of ${registration} failed: ${name} of ${pack} is damaged there`);
        await client.bringBackPackFile({ pack, sha256, body: bytesAt(folder, path) });
        remarks.push(`${registration}: ${name} of ${pack} was damaged or missing, and was brought back`);
      }
    }
  }
  return remarks;
}

/** A manifest that was brought back names attachments that may be damaged, too. */
const MAX_ROUNDS = 2;

/** Files of the packs by digest, with where they lie in the folder. */
function blobsOf({ registration, packs }: AircraftFile, entries: LedgerFile['entries']): Map<string, string> {
  const blobs = new Map<string, string>();
  for (const { kind, body } of entries) {
    if (kind !== 'pack-sealed') continue;
    const sealed = JSON.parse(body) as Record<string, string>;
    for (const { name, sha256 } of filesOfPack(sealed))
      blobs.set(sha256, `${PLACES.pack(registration, sealed.pack ?? '')}/${name}`);
  }
  for (const { sha256, file } of packs.flatMap(({ attachments }) => attachments))
    if (file !== null) blobs.set(sha256, `${PLACES.aircraft(registration)}/${file}`);
  return blobs;
}

/** Hands in what the working records name. A newer service may refuse what an older one took: that does not stop the rest. */
async function uploadFiles(
  client: Slipmark,
  folder: string,
  { registration, visits }: AircraftFile,
): Promise<string[]> {
  const remarks: string[] = [];
  for (const { visit, attachments } of visits)
    for (const { sha256, title, file } of attachments) {
      if (file === null) continue;
      const body = bytesAt(folder, `${PLACES.aircraft(registration)}/${file}`);
      const refused = await refusalOf(client.putAttachment({ sha256, body }), 422);
      if (refused)
        remarks.push(
          `${registration}, visit ${visit}: “${title}” is no longer taken for new packs: ${refused.message}`,
        );
    }
  return remarks;
}

/** Asks the service for what anybody would ask: the end of the chain, and a verdict on every pack. */
async function proveImported(client: Slipmark, { registration, packs }: AircraftFile, entries: LedgerFile['entries']) {
  if ((await entriesAfter(client, registration, entries.at(-1)?.digest)) === undefined)
    throw new Error(`Import of ${registration} failed: its chain ends otherwise there`);
  const sealed = entries.filter(({ kind }) => kind === 'pack-sealed').map(({ body }) => JSON.parse(body));
  for (const { summary } of packs) {
    const { pdfSha256 } = sealed.find(({ pack }) => pack === summary.pack) ?? {};
    const { body } = await client.verify({ body: { pdfSha256 } });
    if (body.pack !== summary.pack)
      throw new Error(`Import of ${registration} failed: ${summary.pack} is not known there`);
  }
}
