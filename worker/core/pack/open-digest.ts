import { canonicalJson } from './canonical-json.ts';
import { sha256 } from './digest.ts';

/** A pack on which the open items depend. */
export interface SealedBefore {
  pack: string;
  issuedAt: string;
  recordSha256: string;
  isWithdrawn: boolean;
}

/** Version of the calculation of open items: kept ones of another version are calculated again. */
const WAY = 'open/3';

/** Returns the digest that shows if kept open items follow from exactly these packs, the oldest first. */
export function openDigest(packs: readonly SealedBefore[]): Promise<string> {
  const told = packs.map(({ pack, issuedAt, recordSha256, isWithdrawn }) => [
    pack,
    issuedAt,
    recordSha256,
    isWithdrawn,
  ]);
  return sha256(canonicalJson([WAY, told]));
}
