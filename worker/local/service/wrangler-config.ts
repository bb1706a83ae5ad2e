import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'jsonc-parser';
import * as z from 'zod';
import { WORKER } from './places.ts';

/** Part of the platform's configuration that the embedded service uses, so that both have the same bindings. */
const WranglerConfig = z.object({
  compatibility_date: z.string(),
  compatibility_flags: z.array(z.string()).default([]),
  durable_objects: z.object({ bindings: z.array(z.object({ name: z.string(), class_name: z.string() })) }),
  r2_buckets: z.array(z.object({ binding: z.string(), bucket_name: z.string() })),
  d1_databases: z.array(z.object({ binding: z.string(), database_name: z.string(), migrations_dir: z.string() })),
});
export type WranglerConfig = z.infer<typeof WranglerConfig>;

export function wranglerConfig(): WranglerConfig {
  return WranglerConfig.parse(parse(readFileSync(join(WORKER, 'wrangler.jsonc'), 'utf8')));
}
