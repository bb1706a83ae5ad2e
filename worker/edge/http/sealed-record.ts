import type { ArchiveFacts, Assessed } from '../../core/core.ts';
import type { VisitRecord } from '../../core/record/record.ts';
import { upgrade } from '../../core/record/upgrades.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/** The record that a pack was sealed from, in the present version. Nobody has checked that it still fits the schema. */
export const sealedForm = async (call: Call, owned: OwnedPack): Promise<Partial<VisitRecord>> =>
  upgrade(await sealedJson<unknown>(call, owned, owned.pack.recordSha256)) as Partial<VisitRecord>;

/**
 * Assesses the sealed record of a pack.
 *
 * @param at time of the assessment
 * @param facts relevant facts of the archive at that time
 * @returns undefined if the record no longer fits the schema
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
