import { damaged } from '../refusal.ts';

/** A prefix code as a table over the next `bits` bits, first bit lowest: symbol times 16 plus the length of its code; 0 is no code. */
export interface Huffman {
  bits: number;
  entries: Uint16Array;
}

const LONGEST_CODE = 15;

/** The canonical prefix code of the given code lengths (RFC 1951, 3.2.2). */
export function huffman(lengths: Uint8Array): Huffman {
  const counts = new Uint16Array(LONGEST_CODE + 1);
  for (const length of lengths) counts[length] = (counts[length] ?? 0) + 1;
  counts[0] = 0;
  let bits = LONGEST_CODE;
  while (bits > 0 && counts[bits] === 0) bits--;
  const next = new Uint32Array(LONGEST_CODE + 2);
  for (let length = 1; length <= LONGEST_CODE; length++) {
    next[length + 1] = ((next[length] ?? 0) + (counts[length] ?? 0)) << 1;
    if ((next[length] ?? 0) + (counts[length] ?? 0) > 1 << length) throw damaged('a compressed part has no valid code');
  }
  const entries = new Uint16Array(1 << bits);
  for (let symbol = 0; symbol < lengths.length; symbol++) {
    const length = lengths[symbol] ?? 0;
    if (length === 0) continue;
    const code = next[length] ?? 0;
    next[length] = code + 1;
    const entry = (symbol << 4) | length;
    for (let at = reversed(code, length); at < entries.length; at += 1 << length) entries[at] = entry;
  }
  return { bits, entries };
}

function reversed(code: number, length: number): number {
  let result = 0;
  for (let bit = 0; bit < length; bit++) result |= ((code >> bit) & 1) << (length - 1 - bit);
  return result;
}
