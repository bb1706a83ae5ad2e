import { lastIndexOf } from '../print/bytes/find-bytes.ts';

// The seal is a JWS (Ed25519, the same signature for the same pack) over the whole file with an empty slot. Digests
// of documents would prove the text and not the page that is shown. Verification needs no PDF reader, so browser and
// Node run the same code. A signature inside the PDF (PAdES) would need a certificate that nobody vouches for, and
// some 250 kB in the Worker. The last place that looks like a slot is the slot: photographs and documents may
// contain any bytes, so it is written behind everything except the table of objects. Trying candidates in turn would
// allow a seal to be moved into an empty place.

/**
 * Slot of the seal in a pack: an attached file of fixed length, stored uncompressed, so that a seal can be written into
 * the finished file and excluded when the file is digested.
 */
export const SLOT_NAME = 'seal.jws';

// Of every form of claims: readers find the slot by it.
const PREFIX = 'slipmark-seal/1 ';
const OPENING = new TextEncoder().encode(`stream\n${PREFIX}`);
const SPACE = 0x20;

/**
 * Returns the bytes of a slot: enough for a signature over the digests of a number of parts, also if pages and
 * positions have many digits.
 */
export function slotBytes(parts: number): number {
  return 1600 + 64 * parts;
}

/** Returns an empty slot. */
export function emptySlot(bytes: number): Uint8Array {
  return new TextEncoder().encode(PREFIX.padEnd(bytes, ' '));
}

/** Position of the seal in a file: from the first byte after the prefix. */
export interface Slot {
  start: number;
  end: number;
}

/**
 * Returns the slot in a file whose writer states the position of the attached file.
 *
 * @param place from its first byte up to the one after its last
 */
export function slotAt({ start, end }: Slot): Slot {
  return { start: start + PREFIX.length, end };
}

/**
 * Returns the slot of a pack; undefined without a slot.
 *
 * Photographs and attached documents may contain anything, also the prefix of a slot. They come before the slot, so the
 * last match is the slot. A seal moved to any other position would leave the last one empty, and would be detected.
 */
export function slotIn(file: Uint8Array): Slot | undefined {
  const at = lastIndexOf(file, OPENING);
  return at < 0 ? undefined : slotFrom(file, at);
}

/** Returns the last possible slot before another. */
export function slotBefore(file: Uint8Array, { start }: Slot): Slot | undefined {
  const at = lastIndexOf(file.subarray(0, start - OPENING.length), OPENING);
  return at < 0 ? undefined : slotFrom(file, at);
}

function slotFrom(file: Uint8Array, at: number): Slot {
  const start = at + OPENING.length;
  let end = start;
  while (end < file.length && isSealByte(file[end] ?? 0)) end++;
  return { start, end };
}

/** Whether a byte is a character of a compact JWS (RFC 7515, section 3.1) or a space that fills the slot. */
function isSealByte(byte: number): boolean {
  return byte === SPACE || /[A-Za-z0-9_.-]/.test(String.fromCharCode(byte));
}

/** Returns the seal in a slot; empty if the file is not sealed. */
export function sealIn(file: Uint8Array, { start, end }: Slot): string {
  return new TextDecoder().decode(file.subarray(start, end)).trimEnd();
}

/**
 * Returns a copy of the file with a seal in its slot; an empty seal empties the slot.
 *
 * @throws Error if the seal is longer than the slot
 */
export function withSeal(file: Uint8Array, { start, end }: Slot, seal: string): Uint8Array {
  if (seal.length > end - start)
    throw new Error(`Cannot seal: the slot has ${end - start} bytes: current value is ${seal.length}`);
  const sealed = file.slice();
  sealed.fill(SPACE, start, end);
  sealed.set(new TextEncoder().encode(seal), start);
  return sealed;
}
