import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack } from '../archive/ledger/ledger-calls.ts';

/** Pack, with its ledger. */
export interface OwnedPack {
  name: LedgerName;
  pack: KeptPack;
}
