/**
 * The place in a pack where its seal stands: an attached file of fixed length, stored as it is, so that a seal can be written into the
 * finished file and left out of account when the file is digested.
 */
export const SLOT_NAME = 'seal.jws';

const PREFIX = 'slipmark-seal/1 ';
/** The slot is the first thing in its stream; no text of a record can follow this keyword and a line feed directly. */
const OPENING = `stream\n${PREFIX}`;
const SPACE = 0x20;

/** Bytes of a slot: enough for a signature over the digests of so many parts. */
export function slotBytes(parts: number): number {
  return 1600 + 56 * parts;
}

/** An empty slot. */
export function emptySlot(bytes: number): Uint8Array {
  return new TextEncoder().encode(PREFIX.padEnd(bytes, ' '));
}

/** Where the seal stands in a file: from the first byte after the prefix. */
export interface Slot {
  start: number;
  end: number;
}

/** The slot of a pack; undefined where there is none, or more than one. */
export function slotIn(file: Uint8Array): Slot | undefined {
  const opening = new TextEncoder().encode(OPENING);
  const at = indexOf(file, opening, 0);
  if (at < 0 || indexOf(file, opening, at + 1) >= 0) return undefined;
  const start = at + opening.length;
  let end = start;
  while (end < file.length && isSealByte(file[end] ?? 0)) end++;
  return { start, end };
}

/** Characters of a compact JWS (RFC 7515, section 3.1) and the spaces that fill the slot. */
function isSealByte(byte: number): boolean {
  return byte === SPACE || /[A-Za-z0-9_.-]/.test(String.fromCharCode(byte));
}

/** The seal that stands in a slot; empty where nobody has sealed the file. */
export function sealIn(file: Uint8Array, { start, end }: Slot): string {
  return new TextDecoder().decode(file.subarray(start, end)).trimEnd();
}

/**
 * A copy of the file with a seal in its slot; an empty seal empties the slot.
 *
 * @throws Error when the seal is longer than the slot
 */
export function withSeal(file: Uint8Array, { start, end }: Slot, seal: string): Uint8Array {
  if (seal.length > end - start)
    throw new Error(`Cannot seal: the slot has ${end - start} bytes: current value is ${seal.length}`);
  const sealed = file.slice();
  sealed.fill(SPACE, start, end);
  sealed.set(new TextEncoder().encode(seal), start);
  return sealed;
}

function indexOf(bytes: Uint8Array, wanted: Uint8Array, from: number): number {
  const first = wanted[0] ?? 0;
  for (let at = bytes.indexOf(first, from); at >= 0; at = bytes.indexOf(first, at + 1))
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return at;
  return -1;
}
