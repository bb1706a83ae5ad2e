import type { Slipmark, VisitRecord } from '../../worker/client/client.ts';
import { upgrade } from '../../worker/core/record/upgrades.ts';

/** The record that a pack was sealed from, in the present version. */
export async function recordOfPack(client: Slipmark, pack: string): Promise<VisitRecord> {
  const { bytes } = await client.getPackRecord({ pack });
  return upgrade(JSON.parse(new TextDecoder().decode(bytes))) as VisitRecord;
}
