import {
  allItems,
  ifThere,
  type LedgerEntry,
  type Pack,
  refusalOf,
  type Slipmark,
  type VisitState,
} from '../../client/client.ts';

/** Whole content of the ledger of an aircraft at one time. */
export interface ReadAircraft {
  registration: string;
  entries: LedgerEntry[];
  /** `record` is null if the service reports it as damaged. */
  visits: (VisitState & { record: string | null })[];
  /** Oldest first. */
  packs: Pack[];
}

/** Max. number of times an aircraft is read again because work on it went on. */
const MAX_READS = 10;

/**
 * Reads an aircraft. Every change extends the chain: if its head is the same before and after, everything read belongs
 * together.
 *
 * @returns undefined if nothing was ever kept of it
 * @throws Error if work on it does not pause long enough to be read
 */
export async function readAircraft(client: Slipmark, registration: string): Promise<ReadAircraft | undefined> {
  const aircraft = { registration };
  for (let reads = 0; reads < MAX_READS; reads++) {
    const before = await ifThere(client.getAircraft(aircraft));
    if (!before) return undefined;
    const entries = await allItems(client.listLedger, aircraft);
    const packs = (await allItems(client.listAircraftPacks, aircraft)).reverse();
    const visits: ReadAircraft['visits'] = [];
    for (const state of await allItems(client.listVisits, aircraft)) {
      const answer = client.getVisit({ registration, visit: state.visit });
      const isDamaged = (await refusalOf(ifThere(answer), 500))?.type === '/problems/damaged';
      const kept = isDamaged ? undefined : await ifThere(answer);
      if (isDamaged) visits.push({ ...state, record: null });
      if (kept) visits.push({ ...state, record: new TextDecoder().decode(kept.bytes) });
    }
    const after = await ifThere(client.getAircraft(aircraft));
    if (after?.body.head.digest === before.body.head.digest) return { registration, entries, visits, packs };
  }
  throw new Error(`Cannot export ${registration}: it was changed each of ${MAX_READS} times that it was read`);
}
