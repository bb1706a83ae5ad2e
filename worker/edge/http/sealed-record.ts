import type { ArchiveFacts, Assessed } from '../../core/core.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * What the core makes of the record that a pack was sealed from.
 *
 * @param at the moment that it is looked at from
 * @param facts what the archive knew then, as far as it matters
 * @returns undefined where the record no longer fits the schema
 */
export async function sealedRecord(
  call: Call,
  owned: OwnedPack,
  at: string,
  facts: ArchiveFacts = {},
): Promise<Assessed | undefined> {
  const record = await sealedJson<unknown>(call, owned, owned.pack.recordSha256);
  const outcome = await call.pipeline.assess(record, at, facts);
  return outcome.ok ? outcome.assessed : undefined;
}
