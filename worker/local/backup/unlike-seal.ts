import { ifThere, type Pack, type Slipmark } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import type { Manifest } from '../../core/pack/manifest.ts';
import type { PackFacts } from '../../core/pack/pack-facts.ts';

/** Members of what lists show of a pack that differ from what was sealed: its facts, or for packs of before its manifest. */
export async function unlikeSeal(client: Slipmark, pack: Pack): Promise<string[]> {
  const name = { pack: pack.pack };
  const facts = await ifThere(client.getPackFacts(name));
  const { issue, ...sealed } = sealedManifest(jsonOf<Manifest>((await client.getPackManifest(name)).body));
  const held = { ...sealed, issue: Number(issue), ...(facts && jsonOf<PackFacts>(facts.body).summary) };
  return Object.entries(held)
    .filter(([key, value]) => canonicalJson(pack[key as keyof Pack] ?? null) !== canonicalJson(value ?? null))
    .map(([key]) => key);
}

/** What of it the manifest names, in every form. */
function sealedManifest({ pack, issue, registration, visit, issuedAt, supersedes, regime, release }: Manifest) {
  return { pack, issue, registration, visit, issuedAt, supersedes, regime: regime.id, releasedBy: release.name };
}

const jsonOf = <T>(bytes: Uint8Array): T => JSON.parse(new TextDecoder().decode(bytes)) as T;
