import { appendFileSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Log, LogLevel, Miniflare, type MiniflareOptions, type WorkerdStructuredLog } from 'miniflare';
import { setAsideDamaged } from './damaged-databases.ts';
import { endOrphans } from './holders.ts';
import { migrateIndex } from './index-migrations.ts';
import { takeLock } from './lock.ts';
import { machineFor } from './machine.ts';
import { SITE, WORKER } from './places.ts';
import { wranglerConfig } from './wrangler-config.ts';

/** Secrets of the deployment. */
export interface Secrets {
  adminSecret: string;
  sealSecret: string;
}

interface Options {
  /** Path of the bundled Worker. */
  script: string;
  /** Folder of the storage. */
  storage: string;
  port: number;
  /** Receives messages for the user of the machine. @default no messages */
  tell?: (line: string) => void;
}

export type EmbeddedOptions = Options & Secrets;

export interface Embedded {
  /** Origin of the service, without a slash at the end. */
  origin: string;
  stop(): Promise<void>;
}

/** Time limit for the start of the runtime. */
const STARTING_MS = 60_000;

/**
 * Starts the service in this process on local storage, with the bindings of the deployed one. Its log is a file there.
 *
 * @throws Error if another process serves this storage, or the runtime does not start
 */
export const startEmbedded = (options: EmbeddedOptions): Promise<Embedded> => startOnceHeld(options, () => options);

/**
 * Starts the service as above, with secrets that are requested once the lock is taken: nobody else can then create
 * them.
 */
export async function startOnceHeld(options: Options, secrets: () => Secrets): Promise<Embedded> {
  const { storage } = options;
  mkdirSync(storage, { recursive: true, mode: 0o700 });
  const lock = await takeLock(storage);
  if (!lock) throw new Error('Cannot start: Slipmark runs already on this storage; stop it first');
  try {
    await endOrphans(storage);
    setAsideDamaged(storage, options.tell ?? (() => undefined));
    const { miniflare, url } = await startRuntime({ ...options, ...secrets() });
    await bringIndexUpToDate(miniflare);
    return {
      origin: url.origin,
      async stop() {
        await miniflare.dispose();
        await lock.release();
      },
    };
  } catch (error) {
    await lock.release();
    throw error;
  }
}

async function startRuntime(options: EmbeddedOptions): Promise<{ miniflare: Miniflare; url: URL }> {
  const miniflare = new Miniflare(miniflareOptions(wranglerConfig(), options));
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    const error = new Error(`Cannot start: the runtime did not start within ${STARTING_MS / 1000} s`);
    timer = setTimeout(() => reject(error), STARTING_MS);
  });
  try {
    return { miniflare, url: await Promise.race([miniflare.ready, late]) };
  } catch (error) {
    await miniflare.dispose().catch(() => undefined);
    throw error;
  } finally {
    clearTimeout(timer);
  }
}

async function bringIndexUpToDate(miniflare: Miniflare): Promise<void> {
  for (const { binding, migrations_dir } of wranglerConfig().d1_databases)
    await migrateIndex(await miniflare.getD1Database(binding), join(WORKER, migrations_dir));
}

function miniflareOptions(
  config: ReturnType<typeof wranglerConfig>,
  { script, storage, port, adminSecret, sealSecret }: EmbeddedOptions,
): MiniflareOptions {
  const objects = config.durable_objects.bindings.map(({ name, class_name: className }) => [
    name,
    { className, useSQLite: true },
  ]);
  const places = { objects: join(storage, 'objects'), blobs: join(storage, 'blobs') };
  const [bucket] = config.r2_buckets;
  return {
    name: 'slipmark',
    host: '127.0.0.1',
    port,
    cf: false,
    log: new Log(LogLevel.ERROR),
    handleStructuredLogs: ({ timestamp, level, message }: WorkerdStructuredLog) => {
      const at = new Date(timestamp).toISOString();
      appendToLog(join(storage, 'service.log'), JSON.stringify({ at, level, message }));
    },
    modules: [{ type: 'ESModule', path: 'worker.js', contents: readFileSync(script, 'utf8') }],
    compatibilityDate: config.compatibility_date,
    compatibilityFlags: config.compatibility_flags,
    durableObjects: Object.fromEntries(objects),
    durableObjectsPersist: places.objects,
    r2Buckets: Object.fromEntries(config.r2_buckets.map(({ binding, bucket_name }) => [binding, bucket_name])),
    r2Persist: places.blobs,
    d1Databases: Object.fromEntries(config.d1_databases.map(({ binding, database_name }) => [binding, database_name])),
    d1Persist: join(storage, 'index'),
    serviceBindings: { MACHINE: machineFor({ ...places, bucket: bucket?.bucket_name ?? '' }) },
    assets: { directory: SITE, workerName: 'slipmark', routerConfig: { has_user_worker: true } },
    bindings: { SLIPMARK_ADMIN: adminSecret, SLIPMARK_SEAL: sealSecret },
  };
}

/** Appends to the log. A log that cannot be written, as on a full disk, does not stop the service. */
function appendToLog(file: string, line: string): void {
  try {
    appendFileSync(file, `${line}\n`);
  } catch {
    // There is no other place to report it.
  }
}
