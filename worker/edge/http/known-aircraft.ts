import type { LedgerName } from '../archive/archive.ts';
import { ArchiveDamaged, orUnavailable } from './answer.ts';
import type { Call } from './route.ts';

/**
 * Records that the workshop has this aircraft, before its ledger is written: the list of aircraft may have one too
 * many, never one too few.
 */
export async function noteAircraft({ world }: Call, { workshop, registration }: LedgerName): Promise<void> {
  orUnavailable(await world.archive.workshop(workshop, (calls) => calls.noteAircraft(registration)));
}

/** Records that something is now kept of this aircraft. */
export async function noteKept({ world }: Call, { workshop, registration }: LedgerName): Promise<void> {
  orUnavailable(await world.archive.workshop(workshop, (calls) => calls.noteKept(registration)));
}

/**
 * Checks that an empty ledger is that of a new aircraft: if the workshop knows that something was kept, it was lost,
 * and new entries would compete with the packs already issued.
 *
 * The workshop is called first: it is updated after the ledger was written, so what it knows the ledger must have. In
 * the other order, a first record that another request keeps in between would look like a lost ledger.
 *
 * @throws HttpProblem 500 if it was lost
 */
export async function requireNotLost({ world }: Call, name: LedgerName): Promise<void> {
  const { workshop, registration } = name;
  if (!orUnavailable(await world.archive.workshop(workshop, (calls) => calls.wasKept(registration)))) return;
  const { head } = orUnavailable(await world.archive.ledger(name, (ledger) => ledger.overview()));
  if (head.seq === 0) throw new ArchiveDamaged(`ledger of ${registration}`);
}
