import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { JSONWebKeySet } from 'jose';
import type { ChainEntry } from '../../edge/archive/ledger/ledger-calls.ts';
import { isDigestOfRecord } from '../../edge/archive/ledger/record-digest.ts';
import { type Replay, type ReplayedPack, replay } from '../../edge/archive/ledger/replay.ts';
import { unlike } from './beside-chain.ts';
import { checkPack } from './check-pack.ts';
import { altered, type FolderDefect } from './defect.ts';
import { bytesAt, digestOf, textAt } from './folder.ts';
import { type AircraftFile, PLACES } from './format.ts';
import { readAircraftFile, readLedger } from './read-folder.ts';

/** Result of the check of one aircraft. */
export interface CheckedAircraft {
  registration: string;
  packs: number;
  /** End of the chain: with an earlier note of it one can verify that nothing was left out. */
  head: { seq: number; digest: string } | undefined;
  defects: FolderDefect[];
}

/** Checks the ledger of an aircraft for consistency, and visits and packs against the ledger. */
export async function checkAircraft(
  folder: string,
  { workshop, registration, keys }: { workshop: string; registration: string; keys: JSONWebKeySet },
): Promise<CheckedAircraft> {
  const at = PLACES.aircraft(registration);
  const aircraft = readAircraftFile(folder, registration);
  const ledger = readLedger(folder, registration);
  const unread = [aircraft, ledger].flatMap((read) => (read.ok ? [] : [read.defect]));
  if (!aircraft.ok || !ledger.ok) return { registration, packs: 0, head: undefined, defects: unread };
  const { entries } = ledger.value;
  const outcome = await replay(registration, entries);
  if (!outcome.ok) {
    const { seq, why } = outcome.fault;
    const defects = [altered(`${at}/ledger.json`, `entry ${seq} cannot stand: ${why}`)];
    return { registration, packs: 0, head: undefined, defects };
  }
  const defects = [
    ...statedDefects(at, aircraft.value, outcome.replay),
    ...(await visitDefects(folder, aircraft.value, outcome.replay)),
  ];
  const packs = [...outcome.replay.packs.values()];
  for (const replayed of packs) {
    const exported = aircraft.value.packs.find(({ summary }) => summary.pack === replayed.pack);
    if (!exported) continue;
    const previousSha256 = outcome.replay.packs.get(replayed.previous ?? '')?.manifestSha256 ?? null;
    defects.push(...(await checkPack({ folder, workshop, registration, keys, replayed, exported, previousSha256 })));
  }
  return { registration, packs: packs.length, head: headOf(entries), defects };
}

function headOf(entries: readonly ChainEntry[]): CheckedAircraft['head'] {
  const last = entries.at(-1);
  return last && { seq: last.seq, digest: last.digest };
}

type PackState = Omit<ReplayedPack, 'previous' | `${string}Sha256`>;

/** Returns the part of a pack that both the list and the chain state. */
function stateOf({ pack, number, issue, visit, issuedAt, supersedes, supersededBy, withdrawal }: PackState): PackState {
  return { pack, number, issue, visit, issuedAt, supersedes, supersededBy, withdrawal };
}

/** Checks that visits and packs match the chain. */
function statedDefects(at: string, { visits, packs }: AircraftFile, { visits: states, packs: replayed }: Replay) {
  const path = `${at}/aircraft.json`;
  const visitsSaid = new Map(visits.map(({ attachments: _, ...state }) => [state.visit, state]));
  const packsSaid = new Map(
    packs.map(({ summary, supersededBy, withdrawal }) => [
      summary.pack,
      stateOf({ ...summary, supersededBy, withdrawal }),
    ]),
  );
  const packsTrue = new Map([...replayed].map(([pack, state]) => [pack, stateOf(state)]));
  return [...unlike(visitsSaid, states), ...unlike(packsSaid, packsTrue)].map((name) =>
    altered(path, `says something else of ${name} than the ledger`),
  );
}

async function visitDefects(folder: string, { registration, visits }: AircraftFile, { visits: states }: Replay) {
  const defects: FolderDefect[] = [];
  for (const { visit, recordSha256 } of states.values()) {
    const path = PLACES.visit(registration, visit);
    if (!existsSync(join(folder, path))) defects.push(altered(path, 'is missing'));
    else if (!(await isDigestOfRecord(textAt(folder, path), recordSha256)))
      defects.push(altered(path, 'is not the record that the ledger names'));
  }
  const files = visits.flatMap(({ attachments }) => attachments);
  for (const { sha256, file } of files) {
    if (file === null) continue;
    const path = `${PLACES.aircraft(registration)}/${file}`;
    if (!existsSync(join(folder, path))) defects.push(altered(path, 'is missing'));
    else if (digestOf(bytesAt(folder, path)) !== sha256) defects.push(altered(path, 'is not the file of its digest'));
  }
  return defects;
}
