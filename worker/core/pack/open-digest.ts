import { canonicalJson } from './canonical-json.ts';
import { sha256 } from './digest.ts';

/** A pack that what stands open follows from. */
export interface SealedBefore {
  pack: string;
  issuedAt: string;
  recordSha256: string;
  isWithdrawn: boolean;
}

/** Moves when what stands open is worked out in another way: what was kept of it is then worked out again. */
const WAY = 'open/2';

/** Tells whether what was kept of open items follows from these very packs, the oldest first. */
export function openDigest(packs: readonly SealedBefore[]): Promise<string> {
  const told = packs.map(({ pack, issuedAt, recordSha256, isWithdrawn }) => [
    pack,
    issuedAt,
    recordSha256,
    isWithdrawn,
  ]);
  return sha256(canonicalJson([WAY, told]));
}
