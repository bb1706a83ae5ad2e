import { allItems, ifThere, type Pack, type Slipmark } from '../../client/client.ts';
import type { PackDocument } from '../../pipeline.ts';
import { digestOf, jsonText, type NewFolder, newFolder } from './folder.ts';
import {
  type AircraftFile,
  type ExportedFile,
  type ExportedPack,
  FORMAT,
  type LedgerFile,
  PACK_FILES,
  type PackFile,
  PLACES,
  type WorkshopFile,
} from './format.ts';
import { folderStyle } from './page.ts';
import { aircraftPage, documentPages, workshopPage } from './pages.ts';
import { type ReadAircraft, readAircraft } from './read-aircraft.ts';

export interface Exported {
  workshop: string;
  aircraft: string[];
  files: number;
}

export interface ExportOptions {
  /** One aircraft. @default all */
  only?: string | undefined;
  /** Told before each aircraft is read. */
  onProgress?: (line: string) => void;
}

/**
 * Writes an aircraft, or all of a workshop, into a new folder. The same state gives the same bytes: neither the address of the service nor
 * the moment of the export is in it.
 */
export async function exportFolder(
  client: Slipmark,
  out: string,
  { only, onProgress }: ExportOptions = {},
): Promise<Exported> {
  const folder = newFolder(out);
  const { workshop, registrations } = await aircraftOf(client);
  const wanted = only === undefined ? registrations : [only];
  const aircraft: string[] = [];
  for (const [index, registration] of wanted.entries()) {
    onProgress?.(`Exporting ${registration}, ${index + 1} of ${wanted.length}`);
    const read = await readAircraft(client, registration);
    if (read) await writeAircraft(client, folder, read);
    if (read) aircraft.push(registration);
  }
  if (only !== undefined && aircraft.length === 0)
    throw new Error(`Cannot export: the workshop has no aircraft ${only}`);
  const file: WorkshopFile = { format: FORMAT, workshop, aircraft };
  folder.write(PLACES.workshop, jsonText(file));
  folder.write(PLACES.keys, jsonText(await keysOf(client, workshop)));
  folder.write(PLACES.style, folderStyle());
  folder.write('index.html', workshopPage(file));
  return { workshop, aircraft, files: folder.finish() };
}

/** By registration, from the workshop itself: the list of all packs may be lost or out of reach. */
async function aircraftOf(client: Slipmark): Promise<{ workshop: string; registrations: string[] }> {
  const { body } = await client.listAircraft({ limit: 1 });
  const listed = await allItems(client.listAircraft, {});
  return { workshop: body.workshop, registrations: listed.map(({ registration }) => registration).sort() };
}

/** In order of their names, so that it does not matter which of them is in use. */
async function keysOf(client: Slipmark, workshop: string): Promise<{ keys: { kid: string }[] }> {
  const published = await ifThere(client.getSealKeys({ workshop }));
  return { keys: (published?.body.keys ?? []).sort((a, b) => (a.kid < b.kid ? -1 : 1)) };
}

async function writeAircraft(client: Slipmark, folder: NewFolder, read: ReadAircraft): Promise<void> {
  const { registration, entries } = read;
  const at = PLACES.aircraft(registration);
  const packs: ExportedPack[] = [];
  for (const pack of read.packs) packs.push(await writePack(client, folder, read, pack));
  const visits: AircraftFile['visits'] = [];
  for (const { record, ...state } of read.visits) {
    folder.write(PLACES.visit(registration, state.visit), record);
    const original = (sha256: string) => client.getAttachmentFile({ sha256 });
    const attachments = await writeAttachments(folder, at, JSON.parse(record), original);
    visits.push({ ...state, attachments });
  }
  const aircraft: AircraftFile = { format: FORMAT, registration, visits, packs };
  const ledger: LedgerFile = { format: FORMAT, registration, entries };
  folder.write(`${at}/aircraft.json`, jsonText(aircraft));
  folder.write(`${at}/ledger.json`, jsonText(ledger));
  folder.write(`${at}/index.html`, aircraftPage(aircraft, ledger));
}

/** The call that gives each file of a pack. */
const GETTERS = {
  'pack.pdf': 'getPackPdf',
  'record.json': 'getPackRecord',
  'manifest.json': 'getPackManifest',
  'documents.json': 'getPackDocuments',
} as const satisfies Record<PackFile, keyof Slipmark>;

async function writePack(client: Slipmark, folder: NewFolder, read: ReadAircraft, pack: Pack) {
  const at = PLACES.pack(read.registration, pack.pack);
  const texts: Partial<Record<PackFile, string>> = {};
  for (const [name, get] of Object.entries(GETTERS) as [PackFile, (typeof GETTERS)[PackFile]][]) {
    const bytes = (await ifThere(client[get]({ pack: pack.pack })))?.body;
    if (!bytes || digestOf(bytes) !== digestInChain(read, pack.pack, name))
      throw new Error(`Cannot export ${pack.pack}: ${name} is not the file that the ledger names`);
    folder.write(`${at}/${name}`, bytes);
    if (name !== 'pack.pdf') texts[name] = new TextDecoder().decode(bytes);
  }
  const aircraft = PLACES.aircraft(read.registration);
  const named = JSON.parse(texts['record.json'] ?? '{}');
  const original = (sha256: string) => client.getPackAttachment({ pack: pack.pack, sha256 });
  const attachments = await writeAttachments(folder, aircraft, named, original);
  const exported = exportedPack(pack, attachments);
  const documents = JSON.parse(texts['documents.json'] ?? '[]') as PackDocument[];
  for (const [name, page] of documentPages(exported, documents)) folder.write(`${at}/documents/${name}.html`, page);
  return exported;
}

function digestInChain({ entries }: ReadAircraft, pack: string, name: PackFile): string | undefined {
  const sealed = entries.filter(({ kind }) => kind === 'pack-sealed').map(({ body }) => JSON.parse(body));
  return sealed.find((body) => body.pack === pack)?.[PACK_FILES[name]];
}

function exportedPack(answered: Pack, attachments: ExportedFile[]): ExportedPack {
  const { registration, pack, number, issue, visit, issuedAt, releasedBy, regime, supersedes } = answered;
  const { emptyMassKg, emptyArmMm, findings, supersededBy, withdrawal } = answered;
  const place = { registration, pack, number, issue, visit, issuedAt, releasedBy, regime, supersedes };
  return { summary: { ...place, emptyMassKg, emptyArmMm, findings }, supersededBy, withdrawal, attachments };
}

interface Naming {
  attachments?: { sha256: string; title: string }[];
}

/** The files that a record names, each once in the folder of its aircraft. */
async function writeAttachments(
  folder: NewFolder,
  aircraft: string,
  { attachments = [] }: Naming,
  original: (sha256: string) => Promise<{ body: Uint8Array }>,
): Promise<ExportedFile[]> {
  const files: ExportedFile[] = [];
  for (const { sha256, title } of attachments) {
    const bytes = (await ifThere(original(sha256)))?.body;
    if (bytes && digestOf(bytes) !== sha256) throw new Error(`Cannot export: the file ${sha256} has another digest`);
    const file = bytes ? `attachments/${sha256}.${endingOf(bytes)}` : null;
    if (bytes && !folder.has(`${aircraft}/${file}`)) folder.write(`${aircraft}/${file}`, bytes);
    files.push({ sha256, title, file });
  }
  return files;
}

/** Told by its first byte: nothing else is ever kept. */
function endingOf(bytes: Uint8Array): 'jpg' | 'png' | 'pdf' {
  if (bytes[0] === 0xff) return 'jpg';
  return bytes[0] === 0x89 ? 'png' : 'pdf';
}
