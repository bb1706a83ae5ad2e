import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack } from '../archive/ledger/ledger-calls.ts';

/** A pack, and whose it is. */
export interface OwnedPack {
  name: LedgerName;
  pack: KeptPack;
}
