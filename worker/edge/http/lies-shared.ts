import type { Manifest, PackDocument } from '../../core/core.ts';
import { sha256 } from '../../core/pack/digest.ts';
import { isOwnKey, keySet } from '../../core/seal/key.ts';
import { verifyFile } from '../../core/seal/verify.ts';
import type { BlobName } from '../archive/archive.ts';
import type { KeptSealKey } from '../archive/workshop/workshop-calls.ts';
import { ArchiveDamaged, orNotFound, orUnavailable } from './answer.ts';
import type { OwnedPack } from './owned-pack.ts';
import { shownIn } from './pack-attachments.ts';
import type { Call } from './route.ts';

/**
 * Returns where a file of a pack may be read. The first edition kept the files of all workshops in one place, and
 * trusted the digests of an import: a ledger that somebody invented then may name files of another workshop. So that
 * place is read only for a pack that was sealed by a key made here, and only for files that were sealed with it. All
 * others must be brought by their workshop.
 */
export async function blobOf(call: Call, owned: OwnedPack, digest: string): Promise<BlobName> {
  const own = { workshop: owned.name.workshop, sha256: digest };
  const { archive } = call.world;
  const isToBeSought = owned.pack.isShared && orUnavailable(await archive.sizeOfBlob(own)) === null;
  return isToBeSought && (await wasSealedHere(call, owned, digest)) ? { ...own, isShared: true } : own;
}

async function wasSealedHere(call: Call, owned: OwnedPack, digest: string): Promise<boolean> {
  const { workshop } = owned.name;
  const keys = orNotFound(
    orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys())),
    'such workshop',
  );
  const { pdfSha256, manifestSha256, recordSha256, documentsSha256 } = owned.pack;
  const isPart = [pdfSha256, manifestSha256, recordSha256, documentsSha256].includes(digest);
  // Only imported keys can have sealed the packs of an import.
  const areAllOwn = keys.every(isOwnKey);
  if (!areAllOwn && !(await isSealedBy(call, owned, keys.filter(isOwnKey)))) return false;
  return isPart || (await isShown(call, owned, digest));
}

/**
 * Whether the documents of a pack that was sealed here show a file. If they are damaged, no file is known to be shown.
 */
async function isShown(call: Call, { name, pack }: OwnedPack, digest: string): Promise<boolean> {
  const { archive } = call.world;
  const part = async <T>(sha256: string): Promise<T> => {
    const bytes = orUnavailable(await archive.blob({ workshop: name.workshop, sha256, isShared: true }));
    if (!bytes) throw new ArchiveDamaged(`${pack.summary.pack} ${sha256}`);
    return jsonIn<T>(bytes);
  };
  try {
    const documents = await part<PackDocument[]>(pack.documentsSha256);
    const manifest = await part<Partial<Manifest> | null>(pack.manifestSha256);
    return shownIn(documents, manifest).has(digest);
  } catch (error) {
    if (error instanceof ArchiveDamaged || error instanceof SyntaxError) return false;
    throw error;
  }
}

/**
 * Whether seal, manifest and documents of a pack match the ledger. Nothing that is read here is returned to the caller.
 */
async function isSealedBy(call: Call, { name, pack }: OwnedPack, keys: readonly KeptSealKey[]): Promise<boolean> {
  const { workshop } = name;
  const read = async (digest: string): Promise<Uint8Array> =>
    orUnavailable(await call.world.archive.blob({ workshop, sha256: digest, isShared: true })) ?? new Uint8Array();
  const verdict = await verifyFile(await read(pack.pdfSha256), keySet(keys));
  if (verdict.kind !== 'genuine') return false;
  const { claims } = verdict;
  const isThis = claims.workshop === workshop && claims.pack === pack.summary.pack;
  const isSame = claims.manifestSha256 === pack.manifestSha256 && claims.recordSha256 === pack.recordSha256;
  if (!isThis || !isSame) return false;
  try {
    const manifest = jsonIn<Pick<Manifest, 'documents'>>(await read(pack.manifestSha256));
    const documents = jsonIn<PackDocument[]>(await read(pack.documentsSha256));
    const named = new Map(manifest.documents.map((document) => [document.id, document.sha256]));
    const digests = await Promise.all(documents.map(({ html }) => sha256(html)));
    return documents.length === named.size && documents.every(({ id }, index) => named.get(id) === digests[index]);
  } catch {
    return false;
  }
}

const jsonIn = <T>(bytes: Uint8Array): T => JSON.parse(new TextDecoder().decode(bytes)) as T;
