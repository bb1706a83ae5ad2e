import { allItems, ifThere, type Pack, type Slipmark, SlipmarkProblem } from '../../client/client.ts';
import type { PackDocument } from '../../core/core.ts';
import { upgrade } from '../../core/record/upgrades.ts';
import { digestOf, jsonText, type NewFolder, newFolder } from './folder.ts';
import {
  type AircraftFile,
  type ExportedFile,
  type ExportedPack,
  FORMAT,
  filesOfPack,
  type LedgerFile,
  type PackFile,
  type PeopleFile,
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
  /** Items not exported because they are damaged in the service, each in a sentence. */
  damaged: string[];
}

export interface ExportOptions {
  /** Registration of a single aircraft. @default all */
  only?: string | undefined;
  /** Called before each aircraft is read. */
  onProgress?: (line: string) => void;
}

/**
 * Writes an aircraft, or all of a workshop, into a new folder. The same state gives the same bytes: neither the address
 * of the service nor the time of the export is in it. Damaged items are named and left out; all others are written.
 */
export async function exportFolder(
  client: Slipmark,
  out: string,
  { only, onProgress }: ExportOptions = {},
): Promise<Exported> {
  const folder = newFolder(out);
  const damaged: string[] = [];
  const { workshop, registrations } = await aircraftOf(client);
  const wanted = only === undefined ? registrations : [only];
  const aircraft: string[] = [];
  for (const [index, registration] of wanted.entries()) {
    onProgress?.(`Exporting ${registration}, ${index + 1} of ${wanted.length}`);
    const read = await unlessDamaged(damaged, `the ledger of ${registration}`, readAircraft(client, registration));
    if (read) await writeAircraft({ client, folder, damaged }, read);
    if (read) aircraft.push(registration);
  }
  if (only !== undefined && aircraft.length === 0 && damaged.length === 0)
    throw new Error(`Cannot export: the workshop has no aircraft ${only}`);
  const file: WorkshopFile = { format: FORMAT, workshop, aircraft };
  folder.write(PLACES.workshop, jsonText(file));
  const keys = await unlessDamaged(damaged, 'a seal key of the workshop', keysOf(client, workshop));
  if (keys) folder.write(PLACES.keys, jsonText(keys));
  const people = await unlessDamaged(damaged, 'the table of people', peopleOf(client));
  if (people && people.people.length > 0) folder.write(PLACES.people, jsonText(people));
  folder.write(PLACES.style, folderStyle());
  folder.write('index.html', workshopPage(file));
  return { workshop, aircraft, files: folder.finish(), damaged };
}

/** Source and target of an export. */
interface Export {
  client: Slipmark;
  folder: NewFolder;
  /** Collects the damaged items. */
  damaged: string[];
}

/** Returns the response of the service; undefined if it reports damage, which is recorded. */
async function unlessDamaged<T>(damaged: string[], what: string, answer: Promise<T>): Promise<T | undefined> {
  try {
    return await answer;
  } catch (error) {
    if (!(error instanceof SlipmarkProblem) || error.type !== '/problems/damaged') throw error;
    damaged.push(`${what} is damaged in the service`);
    return undefined;
  }
}

/** Returns the table of people, without time and key of each entry, which belong to the deployment. */
async function peopleOf(client: Slipmark): Promise<PeopleFile> {
  const { items } = (await client.listPeople()).body;
  const people = items.map(({ id, name, capacity, licence, scope, from, until }) => {
    return { id, name, capacity, licence, scope, from, until };
  });
  return { format: FORMAT, people };
}

/** Returns the aircraft from the workshop itself: the list of all packs may be lost or out of reach. */
async function aircraftOf(client: Slipmark): Promise<{ workshop: string; registrations: string[] }> {
  const { body } = await client.listAircraft({ limit: 1 });
  const listed = await allItems(client.listAircraft, {});
  return { workshop: body.workshop, registrations: listed.map(({ registration }) => registration).sort() };
}

/** Returns the keys, sorted by name so that the order does not depend on which is in use. */
async function keysOf(client: Slipmark, workshop: string): Promise<{ keys: { kid: string }[] }> {
  const published = await ifThere(client.getSealKeys({ workshop }));
  return { keys: (published?.body.keys ?? []).sort((a, b) => (a.kid < b.kid ? -1 : 1)) };
}

async function writeAircraft(exporting: Export, read: ReadAircraft): Promise<void> {
  const { client, folder } = exporting;
  const { registration, entries } = read;
  const at = PLACES.aircraft(registration);
  const packs: ExportedPack[] = [];
  for (const pack of read.packs) packs.push(await writePack(exporting, read, pack));
  const visits: AircraftFile['visits'] = [];
  for (const { record, ...state } of read.visits) {
    if (record === null)
      exporting.damaged.push(`the record of visit ${state.visit} of ${registration} is damaged in the service`);
    else folder.write(PLACES.visit(registration, state.visit), record);
    const original = (sha256: string) => client.getAttachmentFile({ sha256 });
    const attachments = await writeAttachments(exporting, at, recordIn(record), original);
    visits.push({ ...state, attachments });
  }
  const aircraft: AircraftFile = { format: FORMAT, registration, visits, packs };
  const ledger: LedgerFile = { format: FORMAT, registration, entries };
  folder.write(`${at}/aircraft.json`, jsonText(aircraft));
  folder.write(`${at}/ledger.json`, jsonText(ledger));
  folder.write(`${at}/index.html`, aircraftPage(aircraft, ledger));
}

/** Call that returns each file of a pack. */
const GETTERS = {
  'pack.pdf': 'getPackPdf',
  'record.json': 'getPackRecord',
  'manifest.json': 'getPackManifest',
  'documents.json': 'getPackDocuments',
  'facts.json': 'getPackFacts',
} as const satisfies Record<PackFile, keyof Slipmark>;

async function writePack(exporting: Export, read: ReadAircraft, pack: Pack) {
  const { client, folder, damaged } = exporting;
  const at = PLACES.pack(read.registration, pack.pack);
  const texts: Partial<Record<PackFile, string>> = {};
  for (const { name, sha256 } of filesOfPack(sealedBody(read, pack.pack))) {
    const answer = client[GETTERS[name]]({ pack: pack.pack });
    const bytes = (await unlessDamaged(damaged, `${name} of ${pack.pack}`, answer))?.body;
    if (!bytes) continue;
    if (digestOf(bytes) !== sha256)
      throw new Error(`Cannot export ${pack.pack}: ${name} is not the file that the ledger names`);
    folder.write(`${at}/${name}`, bytes);
    if (name !== 'pack.pdf') texts[name] = new TextDecoder().decode(bytes);
  }
  const aircraft = PLACES.aircraft(read.registration);
  const named = recordIn(texts['record.json']);
  const original = (sha256: string) => client.getPackAttachment({ pack: pack.pack, sha256 });
  const attachments = await writeAttachments(exporting, aircraft, named, original);
  const exported = exportedPack(pack, attachments);
  const documents = JSON.parse(texts['documents.json'] ?? '[]') as PackDocument[];
  for (const [name, page] of documentPages(exported, documents)) folder.write(`${at}/documents/${name}.html`, page);
  return exported;
}

/** Returns the entry of the chain about a sealed pack. */
function sealedBody({ entries }: ReadAircraft, pack: string): Parameters<typeof filesOfPack>[0] {
  const sealed = entries.filter(({ kind }) => kind === 'pack-sealed').map(({ body }) => JSON.parse(body));
  return sealed.find((body) => body.pack === pack) ?? {};
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

const recordIn = (text: string | null | undefined): Naming => upgrade(JSON.parse(text ?? '{}')) as Naming;

/** Writes the files that a record names, each once into the folder of its aircraft. */
async function writeAttachments(
  { folder, damaged }: Export,
  aircraft: string,
  { attachments = [] }: Naming,
  original: (sha256: string) => Promise<{ body: Uint8Array }>,
): Promise<ExportedFile[]> {
  const files: ExportedFile[] = [];
  for (const { sha256, title } of attachments) {
    const bytes = (await unlessDamaged(damaged, `“${title}” (${sha256})`, ifThere(original(sha256))))?.body;
    if (bytes && digestOf(bytes) !== sha256) throw new Error(`Cannot export: the file ${sha256} has another digest`);
    const file = bytes ? `attachments/${sha256}.${endingOf(bytes)}` : null;
    if (bytes && !folder.has(`${aircraft}/${file}`)) folder.write(`${aircraft}/${file}`, bytes);
    files.push({ sha256, title, file });
  }
  return files;
}

/** Returns the file ending by the first byte: no other kinds of file are kept. */
function endingOf(bytes: Uint8Array): 'jpg' | 'png' | 'pdf' {
  if (bytes[0] === 0xff) return 'jpg';
  return bytes[0] === 0x89 ? 'png' : 'pdf';
}
