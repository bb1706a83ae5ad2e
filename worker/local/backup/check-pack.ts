import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { JSONWebKeySet } from 'jose';
import type { PackDocument } from '../../core/core.ts';
import type { Manifest } from '../../core/pack/manifest.ts';
import { picturesIn } from '../../core/pack/on-screen.ts';
import type { SealClaims } from '../../core/seal/claims.ts';
import { verifyFile } from '../../core/seal/verify.ts';
import type { ReplayedPack } from '../../edge/archive/ledger/replay.ts';
import { altered, type FolderDefect } from './defect.ts';
import { bytesAt, digestOf, textAt } from './folder.ts';
import { type ExportedPack, filesOfPack, PLACES } from './format.ts';

/** Pack of the folder, with its data in the ledger. */
export interface PackToCheck {
  folder: string;
  workshop: string;
  registration: string;
  keys: JSONWebKeySet;
  replayed: ReplayedPack;
  exported: ExportedPack;
  /** Digest of the manifest of the pack that was sealed before it. */
  previousSha256: string | null;
}

/** Checks a pack against its seal, its manifest and the ledger. */
export async function checkPack(pack: PackToCheck): Promise<FolderDefect[]> {
  const { folder, registration, replayed } = pack;
  const at = PLACES.pack(registration, replayed.pack);
  const files = filesOfPack(replayed);
  const absent = files.filter(({ name }) => !existsSync(join(folder, at, name)));
  if (absent.length > 0) return absent.map(({ name }) => altered(`${at}/${name}`, 'is missing'));
  const byLedger = files
    .filter(({ name, sha256 }) => digestOf(bytesAt(folder, `${at}/${name}`)) !== sha256)
    .map(({ name }) => altered(`${at}/${name}`, 'has another digest than the ledger names'));
  return [...byLedger, ...(await sealDefects(pack, at)), ...manifestDefects(pack, at)];
}

async function sealDefects({ folder, workshop, registration, keys, replayed }: PackToCheck, at: string) {
  const path = `${at}/pack.pdf`;
  const verdict = await verifyFile(bytesAt(folder, path), keys);
  if (verdict.kind === 'altered') return [altered(path, `differs from its seal in ${verdict.parts.join('; ')}`)];
  if (verdict.kind === 'key-unknown')
    return [{ kind: 'unproved', path, what: `is sealed by a key that is not in the set: ${verdict.kid}` } as const];
  if (verdict.kind !== 'genuine') return [altered(path, 'has no seal that holds')];
  const { pack, issue, issuedAt, manifestSha256, recordSha256 } = replayed;
  const expected = { workshop, registration, pack, issue, issuedAt, manifestSha256, recordSha256 };
  const same = (key: keyof typeof expected, value: unknown) => {
    const claimed: SealClaims[keyof typeof expected] = verdict.claims[key];
    return (key === 'registration' ? String(claimed).toUpperCase() : claimed) === value;
  };
  return Object.entries(expected)
    .filter(([key, value]) => !same(key as keyof typeof expected, value))
    .map(([key, value]) => altered(path, `its seal names another ${key} than the ledger, ${value}`));
}

/** Checks the digests in the manifest: record, documents, attachments, and the manifest before it. */
function manifestDefects(pack: PackToCheck, at: string): FolderDefect[] {
  const { folder, registration, exported, replayed, previousSha256 } = pack;
  // Form 1 of the manifest names no facts.
  const manifest = jsonAt<Omit<Manifest, 'facts'> & Partial<Pick<Manifest, 'facts'>>>(folder, `${at}/manifest.json`);
  const documents = jsonAt<PackDocument[]>(folder, `${at}/documents.json`);
  if (!manifest?.documents || !manifest.attachments) return [altered(`${at}/manifest.json`, 'is no manifest')];
  if (!Array.isArray(documents)) return [altered(`${at}/documents.json`, 'is no list of documents')];
  const record = digestOf(bytesAt(folder, `${at}/record.json`)) === manifest.record?.sha256;
  const ids = new Set([...manifest.documents, ...documents].map(({ id }) => id));
  const differing = [...ids].filter((id) => {
    const html = documents.find((document) => document.id === id)?.html;
    const named = manifest.documents.find((document) => document.id === id)?.sha256;
    return html === undefined || digestOf(html) !== named;
  });
  const facts = manifest.facts?.sha256 ?? null;
  const isNext = (manifest.previous?.manifestSha256 ?? null) === previousSha256;
  return [
    ...(record ? [] : [altered(`${at}/record.json`, 'has another digest than the manifest names')]),
    ...differing.map((id) => altered(`${at}/documents.json`, `${id} has another digest than the manifest names`)),
    ...(facts === replayed.factsSha256 ? [] : [altered(`${at}/manifest.json`, 'names other facts than the ledger')]),
    ...(isNext ? [] : [altered(`${at}/manifest.json`, 'names another pack before it than the ledger')]),
    ...attachmentDefects({ folder, registration, manifest, exported, shown: shownIn(documents) }),
  ];
}

/**
 * Returns the digests of the files that the documents show or are followed by: those were there when the pack was
 * sealed.
 */
function shownIn(documents: readonly PackDocument[]): Set<string> {
  const pictures = documents.flatMap(({ html }) => picturesIn(html));
  const appended = documents.flatMap(({ appends }) => (appends === undefined ? [] : [appends]));
  return new Set([...pictures, ...appended]);
}

interface Attached extends Pick<PackToCheck, 'folder' | 'registration' | 'exported'> {
  manifest: Pick<Manifest, 'attachments'>;
  shown: ReadonlySet<string>;
}

function attachmentDefects({ folder, registration, exported, manifest, shown }: Attached): FolderDefect[] {
  const listed = new Map(exported.attachments.map(({ sha256, file }) => [sha256, file]));
  return manifest.attachments.flatMap(({ sha256 }) => {
    const file = listed.get(sha256) ?? null;
    const path = `${PLACES.aircraft(registration)}/${file ?? 'aircraft.json'}`;
    const isMissed = shown.has(sha256) || !listed.has(sha256);
    if (file === null) return isMissed ? [altered(path, `lacks the file ${sha256} of ${exported.summary.pack}`)] : [];
    if (!existsSync(join(folder, path))) return [altered(path, 'is missing')];
    return digestOf(bytesAt(folder, path)) === sha256
      ? []
      : [altered(path, 'has another digest than the manifest names')];
  });
}

function jsonAt<T>(folder: string, path: string): T | undefined {
  try {
    return JSON.parse(textAt(folder, path)) as T;
  } catch {
    return undefined;
  }
}
