import { openAfter } from '../calc/open-items/carry-over.ts';
import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { SealedBefore } from '../pack/open-digest.ts';
import { numberOf } from '../pack/pack-number.ts';
import { readRecord } from '../visit/read-record.ts';

/**
 * What stands open after a sealed pack. A record that no longer fits the schema leaves what stood open as it was.
 *
 * @param before what stood open before it
 * @param record as it was sealed, of any version
 */
export function openAfterPack(before: readonly OpenItem[], record: unknown, sealed: SealedBefore): OpenItem[] {
  const read = readRecord(record);
  if (!read.ok) return [...before];
  const { pack, issuedAt: at, isWithdrawn } = sealed;
  return openAfter(before, read.visit, { pack: numberOf(pack), at, isWithdrawn });
}
