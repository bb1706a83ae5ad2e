import type { KeptPack } from '../archive/ledger/ledger-calls.ts';
import type { Assessed } from '../pipeline.ts';
import { found, reached } from './answer.ts';
import type { Call } from './route.ts';

/**
 * What the core makes of the record that a pack was sealed from.
 *
 * @param at the moment that it is looked at from
 * @returns undefined where the record no longer fits the schema
 */
export async function sealedRecord(call: Call, pack: KeptPack, at: string): Promise<Assessed | undefined> {
  const { world, pipeline } = call;
  const body = found(reached(await world.archive.blob(pack.recordSha256)), 'such record');
  const outcome = await pipeline.assess(await new Response(body).json(), at, {});
  return outcome.ok ? outcome.assessed : undefined;
}
