import { appendFileSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Log, LogLevel, Miniflare, type MiniflareOptions, type WorkerdStructuredLog } from 'miniflare';
import { migrateIndex } from './index-migrations.ts';
import { SITE, WORKER } from './places.ts';
import { wranglerConfig } from './wrangler-config.ts';

export interface EmbeddedOptions {
  /** Path of the bundled Worker. */
  script: string;
  /** Folder that the storage is kept in. */
  storage: string;
  port: number;
  adminSecret: string;
  sealSecret: string;
}

export interface Embedded {
  /** Where the service is reached, without a slash at the end. */
  origin: string;
  stop(): Promise<void>;
}

/** Starts the service in this process on local storage, with the bindings of the deployed one. Its log is a file there. */
export async function startEmbedded(options: EmbeddedOptions): Promise<Embedded> {
  const config = wranglerConfig();
  mkdirSync(options.storage, { recursive: true, mode: 0o700 });
  const miniflare = new Miniflare(miniflareOptions(config, options));
  const url = await miniflare.ready;
  for (const { binding, migrations_dir } of config.d1_databases)
    await migrateIndex(await miniflare.getD1Database(binding), join(WORKER, migrations_dir));
  return { origin: url.origin, stop: () => miniflare.dispose() };
}

function miniflareOptions(
  config: ReturnType<typeof wranglerConfig>,
  { script, storage, port, adminSecret, sealSecret }: EmbeddedOptions,
): MiniflareOptions {
  const objects = config.durable_objects.bindings.map(({ name, class_name: className }) => [
    name,
    { className, useSQLite: true },
  ]);
  return {
    name: 'slipmark',
    host: '127.0.0.1',
    port,
    cf: false,
    log: new Log(LogLevel.ERROR),
    handleStructuredLogs: ({ timestamp, level, message }: WorkerdStructuredLog) => {
      const at = new Date(timestamp).toISOString();
      appendFileSync(join(storage, 'service.log'), `${JSON.stringify({ at, level, message })}\n`);
    },
    modules: [{ type: 'ESModule', path: 'worker.js', contents: readFileSync(script, 'utf8') }],
    compatibilityDate: config.compatibility_date,
    compatibilityFlags: config.compatibility_flags,
    durableObjects: Object.fromEntries(objects),
    durableObjectsPersist: join(storage, 'objects'),
    r2Buckets: Object.fromEntries(config.r2_buckets.map(({ binding, bucket_name }) => [binding, bucket_name])),
    r2Persist: join(storage, 'blobs'),
    d1Databases: Object.fromEntries(config.d1_databases.map(({ binding, database_name }) => [binding, database_name])),
    d1Persist: join(storage, 'index'),
    assets: { directory: SITE, workerName: 'slipmark', routerConfig: { has_user_worker: true } },
    bindings: { SLIPMARK_ADMIN: adminSecret, SLIPMARK_SEAL: sealSecret },
  };
}
