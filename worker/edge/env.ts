import type { Ledger } from './archive/ledger/ledger.ts';
import type { Workshop } from './archive/workshop/workshop.ts';

/** Bindings of the Worker; the names are those of `wrangler.jsonc`. */
export interface Bindings {
  /** One object for each aircraft of a workshop. */
  LEDGER: DurableObjectNamespace<Ledger>;
  /** One object for each workshop: keys and people. */
  WORKSHOP: DurableObjectNamespace<Workshop>;
  /** Sealed files by workshop and digest, uploaded or staged files, and pointers from links and files to ledgers. */
  BLOBS: R2Bucket;
  /** Index of all packs, for lists only. */
  INDEX: D1Database;
  /** Machine of a service that runs without a platform. */
  MACHINE?: Fetcher;
  /** Secret of the deployment to create workshops. Without it none can be created. */
  SLIPMARK_ADMIN?: string;
  /** Secret of the deployment that encrypts the seal keys of workshops. Without it nothing can be sealed. */
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
 * @throws Error naming the missing binding: a fault of the deployment
 */
export function bindings(env: Bindings): Bindings {
  const missing = (['LEDGER', 'WORKSHOP', 'BLOBS', 'INDEX'] as const).filter((name) => !env[name]);
  if (missing.length > 0) throw new Error(`Cannot start: bindings must include ${missing.join(', ')}`);
  return env;
}
