import { phrase } from '../../words/words.ts';
import { joined } from '../bytes/byte-text.ts';
import { damaged, RefusedError } from '../refusal.ts';

const tooLarge = (): RefusedError =>
  new RefusedError('too-large', phrase`a compressed part unpacks to more than it may`);

/** Undoes `RunLengthDecode` (ISO 32000-1, 7.4.5). */
export function fromRunLength(bytes: Uint8Array, mostBytes: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  let total = 0;
  for (let at = 0; at < bytes.length; ) {
    const length = bytes[at] ?? 128;
    if (length === 128) break;
    const run =
      length < 128 ? bytes.subarray(at + 1, at + 2 + length) : new Uint8Array(257 - length).fill(bytes[at + 1] ?? 0);
    pieces.push(run);
    total += run.length;
    if (total > mostBytes) throw tooLarge();
    at += length < 128 ? length + 2 : 2;
  }
  return joined(pieces);
}

const [CLEAR, END, FIRST, MOST_CODES] = [256, 257, 258, 4096];

/** Undoes `LZWDecode` (ISO 32000-1, 7.4.4.2). `early` is its parameter `EarlyChange`. */
export function fromLzw(bytes: Uint8Array, early: number, mostBytes: number): Uint8Array {
  let table: Uint8Array[] = [];
  const clear = (): void => {
    table = Array.from({ length: FIRST }, (_, byte) => Uint8Array.of(byte));
  };
  clear();
  const pieces: Uint8Array[] = [];
  let [hold, held, total, width] = [0, 0, 0, 9];
  let previous: Uint8Array | null = null;
  for (const byte of bytes) {
    hold = ((hold << 8) | byte) & 0xffffff;
    held += 8;
    if (held < width) continue;
    held -= width;
    const code = (hold >> held) & ((1 << width) - 1);
    if (code === END) break;
    if (code === CLEAR) {
      clear();
      [previous, width] = [null, 9];
      continue;
    }
    const known = code < table.length ? table[code] : undefined;
    const piece: Uint8Array | null = known ?? (previous && joined([previous, previous.subarray(0, 1)]));
    if (!piece || code > table.length) throw damaged(phrase`a compressed part has no valid code`);
    if (previous && table.length < MOST_CODES) table.push(joined([previous, piece.subarray(0, 1)]));
    pieces.push(piece);
    total += piece.length;
    if (total > mostBytes) throw tooLarge();
    previous = piece;
    width = Math.min(12, Math.max(9, 32 - Math.clz32(table.length + early)));
  }
  return joined(pieces);
}
