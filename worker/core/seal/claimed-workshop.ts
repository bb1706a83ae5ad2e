import { decodeJwt } from 'jose';
import { sealIn, slotIn } from './slot.ts';

/** The workshop that a file says it was sealed by, unproved; undefined where it says nothing that can be read. */
export function claimedWorkshop(file: Uint8Array): string | undefined {
  const slot = slotIn(file);
  const seal = slot ? sealIn(file, slot) : '';
  try {
    const { workshop } = decodeJwt(seal);
    return typeof workshop === 'string' ? workshop : undefined;
  } catch {
    return undefined;
  }
}
