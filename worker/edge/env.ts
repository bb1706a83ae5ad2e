import type { Ledger } from './archive/ledger/ledger.ts';
import type { Workshop } from './archive/workshop/workshop.ts';

/** What the platform binds to the Worker; the names are those of `wrangler.jsonc`. */
export interface Bindings {
  /** One object an aircraft of a workshop. */
  LEDGER: DurableObjectNamespace<Ledger>;
  /** One object a workshop: who may come in. */
  WORKSHOP: DurableObjectNamespace<Workshop>;
  /** Sealed files by workshop and digest, files that were handed in or brought, and pointers from links and files to ledgers. */
  BLOBS: R2Bucket;
  /** Index of all packs, for lists only. */
  INDEX: D1Database;
  /** The machine that a service without a platform runs on. */
  MACHINE?: Fetcher;
  /** Secret of the deployment, with which workshops are created. Without it none can be. */
  SLIPMARK_ADMIN?: string;
  /** Secret of the deployment, under which workshops keep the keys they seal with. Without it nothing can be sealed. */
  SLIPMARK_SEAL?: string;
}

declare global {
  namespace Cloudflare {
    interface Env extends Bindings {}
  }
}

/**
 * Checks once that the platform has bound everything.
 *
 * @throws Error naming what is missing: a fault of the deployment
 */
export function bindings(env: Bindings): Bindings {
  const missing = (['LEDGER', 'WORKSHOP', 'BLOBS', 'INDEX'] as const).filter((name) => !env[name]);
  if (missing.length > 0) throw new Error(`Cannot start: bindings must include ${missing.join(', ')}`);
  return env;
}
