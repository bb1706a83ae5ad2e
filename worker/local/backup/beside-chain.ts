import type { Pack, VisitState } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import type { Replay } from '../../edge/archive/ledger/replay.ts';

/** Returns the names of visits and packs for which a ledger differs from its chain, or that only one of the two has. */
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

/** Returns the part of a pack that is also in the chain. */
function standingOf({ pack, number, issue, visit, issuedAt, supersedes, supersededBy, ...rest }: Standing): Standing {
  const { withdrawal, previous, manifestSha256, pdfSha256, recordSha256 } = rest;
  const place = { pack, number, issue, visit, issuedAt, supersedes, supersededBy, withdrawal, previous };
  return { ...place, manifestSha256, pdfSha256, recordSha256 };
}

/** Returns the names whose values differ in two maps. */
export function unlike(said: ReadonlyMap<string, object>, held: ReadonlyMap<string, object>): string[] {
  const names = new Set([...said.keys(), ...held.keys()]);
  return [...names].filter((name) => canonicalJson(said.get(name) ?? null) !== canonicalJson(held.get(name) ?? null));
}
