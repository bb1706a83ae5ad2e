import { decodeJwt } from 'jose';
import { sealIn, slotIn } from './slot.ts';

/** Returns the workshop named in the seal of a file, unproved; undefined if none is readable. */
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
