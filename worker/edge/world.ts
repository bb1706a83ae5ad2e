import { LIMITS } from '../core/limits.ts';
import type { Archive } from './archive/archive.ts';
import { CloudArchive } from './archive/cloud-archive.ts';
import { type Bindings, bindings } from './env.ts';
import type { LogEvent } from './log-event.ts';

/** Everything impure that the edge uses: time, randomness, storage, the log. Tests replace it. */
export interface World {
  now(): Date;
  /** Returns 256 random bits as 43 characters of base64url. */
  newToken(): string;
  archive: Archive;
  log(event: LogEvent): void;
  /** Secret of the deployment to create workshops; undefined if none is set. */
  adminSecret: string | undefined;
  /** Max. requests of a key per minute. */
  requestsPerMinute: number;
  /** Secret of the deployment that encrypts seal keys; undefined if none is set. */
  sealSecret: string | undefined;
}

export function cloudWorld(env: Bindings): World {
  return {
    now: () => new Date(),
    newToken: () => base64url(crypto.getRandomValues(new Uint8Array(32))),
    archive: new CloudArchive(bindings(env)),
    log: (event) => console.log(JSON.stringify(event)),
    adminSecret: env.SLIPMARK_ADMIN,
    requestsPerMinute: LIMITS.requestsPerMinute,
    sealSecret: env.SLIPMARK_SEAL,
  };
}

/** Encodes bytes as base64url without padding (RFC 4648, section 5). */
export function base64url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');
}
