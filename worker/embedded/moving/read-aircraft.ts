import type { ChainEntry, KeptPack, VisitState } from '../../archive/ledger/ledger-calls.ts';
import type { Client } from './client.ts';

/** A pack as the API answers it. */
export type AnsweredPack = KeptPack['summary'] & Omit<KeptPack, 'summary' | 'documentsSha256'>;

/** Everything that the ledger of an aircraft says, at one moment. */
export interface ReadAircraft {
  registration: string;
  entries: ChainEntry[];
  visits: (VisitState & { record: string })[];
  /** The oldest first. */
  packs: AnsweredPack[];
}

/** How often an aircraft is read again because work on it went on. */
const MOST_READS = 10;

interface Overview {
  head: { digest: string };
}

/**
 * Reads an aircraft. Whatever changes extends the chain: where its head is the same before and after, all between is of one moment.
 *
 * @returns undefined where nothing was ever kept of it
 * @throws Error when work on it does not pause long enough to be read
 */
export async function readAircraft(client: Client, registration: string): Promise<ReadAircraft | undefined> {
  const address = `/v1/aircraft/${registration}`;
  for (let reads = 0; reads < MOST_READS; reads++) {
    const before = await client.json<Overview>(address);
    if (!before) return undefined;
    const entries = await client.items<ChainEntry>(`${address}/ledger`);
    const packs = (await client.items<AnsweredPack>(`${address}/packs`)).reverse();
    const visits: ReadAircraft['visits'] = [];
    for (const state of await client.items<VisitState>(`${address}/visits`)) {
      const record = await client.bytes(`${address}/visits/${state.visit}`);
      if (record) visits.push({ ...state, record: new TextDecoder().decode(record) });
    }
    const after = await client.json<Overview>(address);
    if (after?.head.digest === before.head.digest) return { registration, entries, visits, packs };
  }
  throw new Error(`Cannot export ${registration}: it was changed each of ${MOST_READS} times that it was read`);
}
