import { allItems, ifThere, refusalOf, type Slipmark, type VisitRecord } from '../../client/client.ts';
import { bytesAt, textAt } from './folder.ts';
import { type AircraftFile, filesOfPack, type LedgerFile, PLACES } from './format.ts';

export interface ImportedAircraft {
  registration: string;
  packs: number;
  /** False if this ledger, or one that continues it, was already there. */
  isNew: boolean;
  /** Whether the service has a different ledger of the aircraft, so that nothing was imported. */
  isRefused: boolean;
  /** Items not imported, each in a sentence. */
  remarks: string[];
}

/**
 * Imports the files of an aircraft, then its ledger, then verifies the result. Steps done before are skipped, so that
 * an interrupted import can be started again.
 *
 * If the service has a ledger that continues that of the folder, only damaged files are replaced.
 *
 * @throws Error if the service refuses, or returns something else than is in the folder
 */
export async function importAircraft(
  client: Slipmark,
  folder: string,
  aircraft: AircraftFile,
  { entries }: LedgerFile,
): Promise<ImportedAircraft> {
  const { registration, packs, visits } = aircraft;
  const head = entries.at(-1)?.digest;
  // A lost ledger counts as missing: this command restores it.
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

/**
 * Returns the number of entries after the end of the folder's chain; undefined if that chain is not part of the current
 * one.
 */
async function entriesAfter(client: Slipmark, registration: string, head: string | undefined) {
  const standing = await allItems(client.listLedger, { registration });
  const at = standing.findIndex(({ digest }) => digest === head);
  return at < 0 ? undefined : standing.length - at - 1;
}

/** Sends damaged records again. A record that was amended since differs from that of the folder, and stays. */
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
 * Restores damaged or missing files of packs, file by file, and compares every byte with its digest. The manifest names
 * the attachments, so it comes before them.
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

/** Max. rounds of repair: a restored manifest may name attachments that are damaged as well. */
const MAX_ROUNDS = 2;

/** Returns the files of the packs by digest, with their paths in the folder. */
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

/**
 * Uploads the files of the working records. A newer service may refuse files that an older one accepted: the others are
 * still sent.
 */
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

/** Verifies the import with public calls: the end of the chain, and a verdict on every pack. */
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
