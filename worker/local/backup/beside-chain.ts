import type { Pack, VisitState } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import type { Replay } from '../../edge/archive/ledger/replay.ts';

/** Names of visits and packs of which a ledger says something else than its chain, or only one of the two knows. */
export function unlikeChain(visits: readonly VisitState[], packs: readonly Pack[], held: Replay): string[] {
  const said = new Map(visits.map((state) => [state.visit, state]));
  return [
    ...unlike(said, held.visits).map((visit) => `visit ${visit}`),
    ...unlike(
      new Map(packs.map((pack) => [pack.pack, standingOf(pack)])),
      new Map([...held.packs].map(([name, pack]) => [name, standingOf(pack)])),
    ),
  ];
}

type Standing = Pick<
  Pack,
  'pack' | 'number' | 'issue' | 'visit' | 'issuedAt' | 'supersedes' | 'supersededBy' | 'withdrawal' | 'previous'
> &
  Pick<Pack, 'manifestSha256' | 'pdfSha256' | 'recordSha256'>;

/** What the chain tells of a pack, too. */
function standingOf({ pack, number, issue, visit, issuedAt, supersedes, supersededBy, ...rest }: Standing): Standing {
  const { withdrawal, previous, manifestSha256, pdfSha256, recordSha256 } = rest;
  const place = { pack, number, issue, visit, issuedAt, supersedes, supersededBy, withdrawal, previous };
  return { ...place, manifestSha256, pdfSha256, recordSha256 };
}

/** Names of which two maps do not hold the same. */
export function unlike(said: ReadonlyMap<string, object>, held: ReadonlyMap<string, object>): string[] {
  const names = new Set([...said.keys(), ...held.keys()]);
  return [...names].filter((name) => canonicalJson(said.get(name) ?? null) !== canonicalJson(held.get(name) ?? null));
}
