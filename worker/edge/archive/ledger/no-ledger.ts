import { GENESIS } from './chain.ts';
import type { LedgerCalls, VisitAmongPacks } from './ledger-calls.ts';

/** Results for an aircraft without any record. */
export const NO_LEDGER: LedgerCalls = {
  overview: async () => ({ visits: 0, packs: 0, newest: null, head: { seq: 0, digest: GENESIS } }),
  visit: async () => null,
  visits: async () => ({ items: [], next: null }),
  packsAround: async () => ({ state: null, own: null, before: [], after: [] }),
  visitAmongPacks: async (registration, visit) => visitOfNone(registration, visit),
  visitToSeal: async (registration, visit) => ({ ...visitOfNone(registration, visit), turn: null }),
  leaveTurn: async () => undefined,
  newestIssues: async () => [],
  repeated: async () => ({ kind: 'first' }),
  pack: async () => null,
  traced: async () => null,
  packs: async () => ({ items: [], next: null }),
  entries: async () => ({ items: [], next: null }),
  links: async () => null,
  openLink: async () => null,
  noteOpening: async () => undefined,
  addLink: async () => ({ kind: 'no-pack' }),
  revokeLink: async () => null,
  withdraw: async () => null,
  relist: async () => ({ packs: [], tokens: [], mended: 0 }),
  // Callers that may create a ledger use the ledger itself: the remaining ones have read a version of a visit that is
  // not there.
  keep: async () => ({ kind: 'moved' }),
  commit: async () => unbegun(),
  rememberStanding: async () => unbegun(),
  restore: async () => unbegun(),
};

/** Throws: every caller that writes to a ledger states that it may be created. */
function unbegun(): never {
  throw new Error('Cannot write to a ledger that was not begun');
}

function visitOfNone(registration: string, visit: string): VisitAmongPacks {
  const place = { pack: `${registration}-P1-1`, number: 1, issue: 1, visit, before: [] };
  return { kept: null, own: null, before: [], after: [], place };
}
