import { ifThere, type Pack, type Slipmark } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import type { Manifest } from '../../core/pack/manifest.ts';
import type { PackFacts } from '../../core/pack/pack-facts.ts';

/** Returns the members of a summary that differ from the sealed data: the facts, or the manifest of an older pack. */
export async function unlikeSeal(client: Slipmark, pack: Pack): Promise<string[]> {
  const name = { pack: pack.pack };
  const facts = await ifThere(client.getPackFacts(name));
  const { issue, ...sealed } = sealedManifest(jsonOf<Manifest>((await client.getPackManifest(name)).body));
  const held = { ...sealed, issue: Number(issue), ...(facts && jsonOf<PackFacts>(facts.body).summary) };
  return Object.entries(held)
    .filter(([key, value]) => canonicalJson(pack[key as keyof Pack] ?? null) !== canonicalJson(value ?? null))
    .map(([key]) => key);
}

/** Returns the part of the summary that is in the manifest of every form. */
function sealedManifest({ pack, issue, registration, visit, issuedAt, supersedes, regime, release }: Manifest) {
  return { pack, issue, registration, visit, issuedAt, supersedes, regime: regime.id, releasedBy: release.name };
}

const jsonOf = <T>(bytes: Uint8Array): T => JSON.parse(new TextDecoder().decode(bytes)) as T;
