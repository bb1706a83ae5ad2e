import type { LedgerName } from '../archive/archive.ts';
import { reached } from './answer.ts';
import type { Call } from './route.ts';

/** Notes that the workshop has this aircraft, before its ledger is written: the list of aircraft may then name one too many, never one too few. */
export async function noteAircraft({ world }: Call, { workshop, registration }: LedgerName): Promise<void> {
  reached(await world.archive.workshop(workshop, (calls) => calls.noteAircraft(registration)));
}
