import type { ArchiveFacts, Past } from '../../core/core.ts';
import { PACK_NAME, WORKSHOP } from '../../core/patterns.ts';
import { isObject } from '../../core/record/is-object.ts';
import { StandingProof } from '../../core/record/standing.ts';
import type { StandingFile } from '../../core/record/standing-file.ts';
import { dateOf } from '../../core/units/calendar.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack } from '../archive/ledger/ledger-calls.ts';
import { orUnavailable } from './answer.ts';
import { structuralDefects } from './json-structure.ts';
import { openBefore } from './open-before.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedRecord } from './sealed-record.ts';

// Nothing of a standing file is stored: it follows from the sealed records each time. So a restored ledger has nothing
// to believe.

/** Reference of a record to a standing file. */
interface StandingReference {
  pack: string;
  sha256: string;
}

/** Returns the reference in a record of any shape; undefined if it has none. */
export function standingIn(value: unknown): StandingReference | undefined {
  const standing = isObject(value) ? value.standing : undefined;
  if (!isObject(standing)) return undefined;
  const { pack, sha256 } = standing;
  return typeof pack === 'string' && typeof sha256 === 'string' ? { pack: pack.toUpperCase(), sha256 } : undefined;
}

/**
 * Returns the standing file after a pack.
 *
 * @param past open items and readings after the pack
 * @returns undefined if its record no longer fits the schema
 */
export async function standingFile(call: Call, owned: OwnedPack, past: Past): Promise<StandingFile | undefined> {
  const { recordSha256, summary } = owned.pack;
  const assessed = await sealedRecord(call, owned, summary.issuedAt);
  const sealed = { pack: summary.pack, sha256: recordSha256, date: dateOf(summary.issuedAt) };
  return assessed && call.pipeline.standingAfter(assessed, sealed, past);
}

type StandingFacts = Pick<ArchiveFacts, 'standing' | 'newerStanding' | 'lastUnderOtherMarks' | 'standingSealedBy'>;

/**
 * Returns what the assessment of a record needs of the standing file that it names.
 *
 * @param last newest pack of the aircraft before the visit, and what is open after it
 */
export async function standingFacts(call: Call, value: unknown, last?: WithPast): Promise<StandingFacts> {
  const named = standingIn(value);
  if (!named) {
    const newest = last && (await standingFile(call, last.owned, last.past));
    return newest ? { newerStanding: newest } : {};
  }
  const { named: file, newest, newestPack } = await standingFiles(call, named, last);
  const brought = file ? { standing: file } : await broughtFile(call, value, named);
  const { summary, recordSha256 } = newestPack ?? {};
  return {
    ...brought,
    ...(newest && newest !== file && { newerStanding: newest }),
    ...(!last && summary && recordSha256 && { lastUnderOtherMarks: { pack: summary.pack, recordSha256 } }),
  };
}

/** Returns the file that a record names of another workshop, if its proof holds. */
async function broughtFile(call: Call, value: unknown, named: StandingReference): Promise<StandingFacts> {
  const stated = isObject(value) && isObject(value.standing) ? value.standing.proof : undefined;
  const proof = StandingProof.safeParse(stated).data;
  // A text within a text: its structure is checked here, as that of a body is.
  const texts = proof ? [proof.record, proof.manifest, proof.facts] : [];
  if (!proof || texts.some((text) => text !== undefined && structuralDefects(text).length > 0)) return {};
  const proved = await call.pipeline.provedFile(named, proof);
  if (!proved) return {};
  const { workshop, kid } = proved.sealedBy;
  const keys = WORKSHOP.test(workshop)
    ? orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys()))
    : null;
  const isKnown = keys?.some((key) => key.kid === kid) ?? false;
  return { standing: proved.file, standingSealedBy: { workshop, kid, isKnown } };
}

/** Standing file that a record names, and the one after the newest release; the same object if these are one. */
export interface StandingFiles {
  named: StandingFile | undefined;
  newest: StandingFile | undefined;
  newestPack: KeptPack | undefined;
}

/** A pack, and what is open after it. */
interface WithPast {
  owned: OwnedPack;
  past: Past;
}

/**
 * Returns the file that a record names, if the workshop of the caller has that pack with that digest, and the newest.
 *
 * @param last newest pack of the aircraft before the visit; without one, the newest under the marks of the named pack
 */
export async function standingFiles(call: Call, named: StandingReference, last?: WithPast): Promise<StandingFiles> {
  const fileAfter = ({ owned, past }: WithPast) => standingFile(call, owned, past);
  const isNamed = (pack: KeptPack | undefined): boolean =>
    pack?.summary.pack === named.pack && pack.recordSha256 === named.sha256;
  const known = last && isNamed(last.owned.pack) ? undefined : await packsUpTo(call, named);
  const newest = last ?? known?.newest;
  const ofNewest = newest && (await fileAfter(newest));
  const isNewest = isNamed(newest?.owned.pack);
  return {
    named: isNewest ? ofNewest : known && (await fileAfter(known.named)),
    newest: ofNewest,
    newestPack: newest?.owned.pack,
  };
}

/** Returns a named pack of the workshop of the caller, and the newest release of the same marks. */
async function packsUpTo(
  call: Call,
  { pack: wanted, sha256 }: StandingReference,
): Promise<{ named: WithPast; newest: WithPast | undefined } | undefined> {
  const registration = PACK_NAME.exec(wanted)?.[1];
  if (registration === undefined) return undefined;
  const name: LedgerName = { workshop: call.caller.workshop, registration };
  const pack = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.pack(wanted)));
  if (pack?.recordSha256 !== sha256) return undefined;
  const packs = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.newestIssues()));
  const before = packs.filter(({ summary }) => summary.number < pack.summary.number);
  const after = async (of: KeptPack, upTo: readonly KeptPack[]): Promise<WithPast> => ({
    owned: { name, pack: of },
    past: await openBefore(call, name, upTo),
  });
  const newest = packs.findLast(({ withdrawal }) => withdrawal === null);
  return { named: await after(pack, [...before, pack]), newest: newest && (await after(newest, packs)) };
}
