import { decodeJwt } from 'jose';
import { sealIn, slotIn } from './slot.ts';

/** Returns the parts of the file named in a seal, unproved; none if it is not readable. */
export function claimedParts(seal: string): unknown[][] {
  try {
    const { parts } = decodeJwt(seal);
    return Array.isArray(parts) ? parts.filter(Array.isArray) : [];
  } catch {
    return [];
  }
}

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
