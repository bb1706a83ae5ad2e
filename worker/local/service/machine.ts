import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Response } from 'miniflare';
import { isDamaged } from './damaged-databases.ts';
import { syncFile } from './sync-file.ts';

/** Folders of objects and bucket in a storage folder of the runtime. */
export interface StoragePlaces {
  objects: string;
  blobs: string;
  bucket: string;
}

const OBJECT = /^\/objects\/(Ledger|Workshop)\/([0-9a-f]{64})(\/damage)?$/;

/** Used part of a request. */
interface Asked {
  url: string;
  json(): Promise<unknown>;
}

/**
 * Serves requests of the Worker to the machine: which objects exist, and whether files of the bucket are flushed to the
 * disk. The runtime flushes its databases, but not the files of the bucket.
 */
export function machineFor(places: StoragePlaces): (request: Asked) => Promise<Response> {
  return async (request) => {
    const { pathname } = new URL(request.url);
    const [, className, id, damage] = OBJECT.exec(pathname) ?? [];
    if (className) {
      const database = join(places.objects, `slipmark-${className}`, `${id}.sqlite`);
      const isSo = damage === undefined ? existsSync(database) : isDamaged(database);
      return new Response(null, { status: isSo ? 204 : 404 });
    }
    if (pathname !== '/settle') return new Response(null, { status: 404 });
    try {
      settle(places, (await request.json()) as string[]);
      return new Response(null, { status: 204 });
    } catch (error) {
      return new Response(error instanceof Error ? error.message : String(error), { status: 500 });
    }
  };
}

/** Flushes the files under these keys, their names and their list to the disk, so that they outlast a power cut. */
function settle({ blobs, bucket }: StoragePlaces, keys: readonly string[]): void {
  const lists = join(blobs, 'miniflare-R2BucketObject');
  const databases = readdirSync(lists).filter((name) => name.endsWith('.sqlite') && name !== 'metadata.sqlite');
  const folder = join(blobs, bucket, 'blobs');
  for (const name of databases) {
    for (const blob of blobsUnder(join(lists, name), keys)) syncFile(join(folder, blob));
    syncFile(join(lists, name));
    if (existsSync(join(lists, `${name}-wal`))) syncFile(join(lists, `${name}-wal`));
  }
  for (const place of [folder, lists]) syncFile(place);
}

/** Returns the names of the files with the content of the keys. */
function blobsUnder(database: string, keys: readonly string[]): string[] {
  const list = new DatabaseSync(database, { readOnly: true });
  try {
    const asked = list.prepare('SELECT blob_id FROM _mf_objects WHERE key = ? AND blob_id IS NOT NULL');
    return keys.flatMap((key) => asked.all(key).map(({ blob_id }) => String(blob_id)));
  } finally {
    list.close();
  }
}
