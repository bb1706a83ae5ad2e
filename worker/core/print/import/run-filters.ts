import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { GrowingBytes } from '../bytes/growing-bytes.ts';
import { damaged } from '../refusal.ts';

/** Undoes `RunLengthDecode` (ISO 32000-1, 7.4.5). */
export function fromRunLength(bytes: Uint8Array, budget: Budget): Uint8Array {
  budget.spend('unpackedBytes', bytes.length);
  const out = new GrowingBytes();
  for (let at = 0; at < bytes.length; ) {
    const length = bytes[at] ?? 128;
    if (length === 128) break;
    const before = out.length;
    if (length < 128) out.putAll(bytes.subarray(at + 1, at + 2 + length));
    else out.fill(bytes[at + 1] ?? 0, 257 - length);
    budget.spend('unpackedBytes', out.length - before);
    at += length < 128 ? length + 2 : 2;
  }
  return out.taken();
}

const [CLEAR, END, FIRST, MAX_CODES] = [256, 257, 258, 4096];

/**
 * Undoes `LZWDecode` (ISO 32000-1, 7.4.4.2). `early` is its parameter `EarlyChange`.
 *
 * A code stands for what another one stands for and a byte after it: it is written from its end.
 */
export function fromLzw(bytes: Uint8Array, early: number, budget: Budget): Uint8Array {
  budget.spend('unpackedBytes', bytes.length);
  const prefix = new Uint16Array(MAX_CODES);
  const suffix = new Uint8Array(MAX_CODES);
  const lengths = new Uint16Array(MAX_CODES).fill(1);
  for (let byte = 0; byte < CLEAR; byte++) suffix[byte] = byte;
  const piece = new Uint8Array(MAX_CODES);
  const out = new GrowingBytes();
  let [hold, held, codes, width] = [0, 0, FIRST, 9];
  let previous = -1;
  const pieceOf = (code: number): Uint8Array => {
    const length = lengths[code] ?? 1;
    for (let i = length - 1, at = code; i >= 0; i--, at = prefix[at] ?? 0) piece[i] = suffix[at] ?? 0;
    return piece.subarray(0, length);
  };
  for (const byte of bytes) {
    hold = ((hold << 8) | byte) & 0xffffff;
    held += 8;
    if (held < width) continue;
    held -= width;
    const code = (hold >> held) & ((1 << width) - 1);
    if (code === END) break;
    if (code === CLEAR) {
      [codes, width, previous] = [FIRST, 9, -1];
      continue;
    }
    // The newest code may be used before it is known: then it is the one before it, and its own first byte again.
    if (code > codes || (code === codes && previous < 0)) throw damaged(fault('compressed-part-no-valid-code'));
    const first = pieceOf(code === codes ? previous : code)[0] ?? 0;
    if (previous >= 0 && codes < MAX_CODES) {
      prefix[codes] = previous;
      suffix[codes] = first;
      lengths[codes] = (lengths[previous] ?? 0) + 1;
      codes += 1;
    }
    if (code >= codes) throw damaged(fault('compressed-part-no-valid-code'));
    const whole = pieceOf(code);
    budget.spend('unpackedBytes', whole.length);
    out.putAll(whole);
    previous = code;
    width = Math.min(12, Math.max(9, 32 - Math.clz32(codes + early)));
  }
  return out.taken();
}
