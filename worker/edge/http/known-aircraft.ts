import type { LedgerName } from '../archive/archive.ts';
import { ArchiveDamaged, orUnavailable } from './answer.ts';
import type { Call } from './route.ts';

/** Notes that the workshop has this aircraft, before its ledger is written: the list of aircraft may then name one too many, never one too few. */
export async function noteAircraft({ world }: Call, { workshop, registration }: LedgerName): Promise<void> {
  orUnavailable(await world.archive.workshop(workshop, (calls) => calls.noteAircraft(registration)));
}

/** Notes that something is kept of this aircraft now. */
export async function noteKept({ world }: Call, { workshop, registration }: LedgerName): Promise<void> {
  orUnavailable(await world.archive.workshop(workshop, (calls) => calls.noteKept(registration)));
}

/**
 * Holds that an empty ledger is that of a new aircraft: where the workshop knows that something was kept, it was lost, and whatever is
 * written to it now would stand beside the packs that were given out.
 *
 * The workshop is asked first: it is told after the ledger was written, so what it knows the ledger must have. Asked in the other order,
 * a first record that another request keeps in between would look like a ledger that was lost.
 *
 * @throws Refusal 500 where it was lost
 */
export async function requireNotLost({ world }: Call, name: LedgerName): Promise<void> {
  const { workshop, registration } = name;
  if (!orUnavailable(await world.archive.workshop(workshop, (calls) => calls.wasKept(registration)))) return;
  const { head } = orUnavailable(await world.archive.ledger(name, (ledger) => ledger.overview()));
  if (head.seq === 0) throw new ArchiveDamaged(`ledger of ${registration}`);
}
