import { lastIndexOf } from '../print/bytes/find-bytes.ts';

/**
 * The place in a pack where its seal stands: an attached file of fixed length, stored as it is, so that a seal can be written into the
 * finished file and left out of account when the file is digested.
 */
export const SLOT_NAME = 'seal.jws';

const PREFIX = 'slipmark-seal/1 ';
const OPENING = new TextEncoder().encode(`stream\n${PREFIX}`);
const SPACE = 0x20;

/** Bytes of a slot: enough for a signature over the digests of so many parts, also where pages and places have many figures. */
export function slotBytes(parts: number): number {
  return 1600 + 64 * parts;
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

/**
 * The slot in a file whose writer says where the attached file stands.
 *
 * @param place from its first byte up to the one after its last
 */
export function slotAt({ start, end }: Slot): Slot {
  return { start: start + PREFIX.length, end };
}

/**
 * The slot of a pack; undefined where there is none.
 *
 * Photographs and papers may hold anything, also what a slot begins with. They stand before the slot: the last place that looks like one is
 * it. To move a seal to any other place of the file would leave the last one without, and be told.
 */
export function slotIn(file: Uint8Array): Slot | undefined {
  const at = lastIndexOf(file, OPENING);
  return at < 0 ? undefined : slotFrom(file, at);
}

/** The last place before a slot that looks like one. */
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
