import { damaged, RefusedError } from '../refusal.ts';
import { joined } from './byte-text.ts';
import { type Huffman, huffman } from './huffman.ts';

/** Takes what was unpacked, piece by piece. A piece is valid only during the call. */
export type Sink = (piece: Uint8Array) => void;

// RFC 1951, 3.2.5: the first length or distance of each symbol, and how many further bits it takes.
const LENGTHS = [
  3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258,
];
const LENGTH_BITS = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
const DISTANCES = [
  1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145,
  8193, 12289, 16385, 24577,
];
const DISTANCE_BITS = [
  0, 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 11, 12, 12, 13, 13,
];
const CODE_LENGTH_ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

const END_OF_BLOCK = 256;
const WINDOW_BYTES = 32_768;
const BUFFER_BYTES = 4 * WINDOW_BYTES;

const FIXED_LITERALS = huffman(
  Uint8Array.from({ length: 288 }, (_, symbol) => (symbol < 144 ? 8 : symbol < 256 ? 9 : symbol < 280 ? 7 : 8)),
);
const FIXED_DISTANCES = huffman(new Uint8Array(30).fill(5));

const early = (): RefusedError => damaged('a compressed part ends early');

interface BitReader {
  bits: (count: number) => number;
  symbol: (code: Huffman) => number;
  /** So many bytes from the next byte boundary. */
  bytes: (count: number) => Uint8Array;
}

function createBitReader(packed: Uint8Array, start: number): BitReader {
  let at = start;
  let hold = 0;
  let held = 0;
  const fill = (count: number): void => {
    while (held < count && at < packed.length) {
      hold |= (packed[at++] ?? 0) << held;
      held += 8;
    }
  };
  const drop = (count: number): void => {
    if (count > held) throw early();
    hold >>>= count;
    held -= count;
  };
  return {
    bits: (count) => {
      fill(count);
      const value = hold & ((1 << count) - 1);
      drop(count);
      return value;
    },
    symbol: ({ bits, entries }) => {
      fill(bits);
      const entry = entries[hold & ((1 << bits) - 1)] ?? 0;
      if (entry === 0) throw damaged('a compressed part has no valid code');
      drop(entry & 15);
      return entry >> 4;
    },
    bytes: (count) => {
      at -= held >> 3;
      hold = 0;
      held = 0;
      if (at + count > packed.length) throw early();
      at += count;
      return packed.subarray(at - count, at);
    },
  };
}

function dynamicCodes(reader: BitReader): [literals: Huffman, distances: Huffman] {
  const [literals, distances, lengths] = [reader.bits(5) + 257, reader.bits(5) + 1, reader.bits(4) + 4];
  const codeLengths = new Uint8Array(19);
  for (const symbol of CODE_LENGTH_ORDER.slice(0, lengths)) codeLengths[symbol] = reader.bits(3);
  const code = huffman(codeLengths);
  const all = new Uint8Array(literals + distances);
  for (let at = 0; at < all.length; ) {
    const symbol = reader.symbol(code);
    const value = symbol < 16 ? symbol : symbol === 16 ? (all[at - 1] ?? 0) : 0;
    const times =
      symbol < 16 ? 1 : symbol === 16 ? 3 + reader.bits(2) : symbol === 17 ? 3 + reader.bits(3) : 11 + reader.bits(7);
    if (at + times > all.length) throw damaged('a compressed part has no valid code');
    all.fill(value, at, at + times);
    at += times;
  }
  return [huffman(all.subarray(0, literals)), huffman(all.subarray(literals))];
}

interface Window {
  put: (byte: number) => void;
  putAll: (bytes: Uint8Array) => void;
  copy: (distance: number, length: number) => void;
  flush: () => void;
}

function createWindow(sink: Sink, mostBytes: number): Window {
  const buffer = new Uint8Array(BUFFER_BYTES);
  let end = 0;
  let flushed = 0;
  let total = 0;
  const flush = (): void => {
    total += end - flushed;
    if (total > mostBytes) throw new RefusedError('too-large', 'a compressed part unpacks to more than it may');
    sink(buffer.subarray(flushed, end));
    flushed = end;
  };
  const room = (): void => {
    if (end < BUFFER_BYTES) return;
    flush();
    buffer.copyWithin(0, end - WINDOW_BYTES);
    end = WINDOW_BYTES;
    flushed = end;
  };
  const put = (byte: number): void => {
    room();
    buffer[end++] = byte;
  };
  return {
    put,
    putAll: (bytes) => bytes.forEach(put),
    copy: (distance, length) => {
      if (distance > end) throw damaged('a compressed part points before its beginning');
      for (let i = 0; i < length; i++) {
        room();
        buffer[end] = buffer[end - distance] ?? 0;
        end++;
      }
    },
    flush,
  };
}

function inflateBlock(reader: BitReader, window: Window, literals: Huffman, distances: Huffman): void {
  for (;;) {
    const symbol = reader.symbol(literals);
    if (symbol === END_OF_BLOCK) return;
    if (symbol < END_OF_BLOCK) {
      window.put(symbol);
      continue;
    }
    const length = (LENGTHS[symbol - 257] ?? 0) + reader.bits(LENGTH_BITS[symbol - 257] ?? 0);
    const far = reader.symbol(distances);
    const distance = (DISTANCES[far] ?? 0) + reader.bits(DISTANCE_BITS[far] ?? 0);
    if (length === 0 || distance === 0) throw damaged('a compressed part has no valid code');
    window.copy(distance, length);
  }
}

/**
 * Unpacks zlib data (RFC 1950, 1951) piece by piece. Own code, because the platform's is asynchronous and differs in what it
 * forgives, and the PDF library's knows no bound.
 *
 * Refuses what ends early or has no valid code as damaged, and more than `mostBytes` as too large. The checksum is not compared, and bytes
 * after the end are let pass, as readers of PDF do.
 */
export function inflate(packed: Uint8Array, mostBytes: number, sink: Sink): void {
  const [method = 0, flags = 0] = packed;
  if (packed.length < 2 || (method & 15) !== 8 || ((method << 8) | flags) % 31 !== 0 || (flags & 32) !== 0)
    throw damaged('a compressed part has no valid beginning');
  const reader = createBitReader(packed, 2);
  const window = createWindow(sink, mostBytes);
  for (let last = false; !last; ) {
    last = reader.bits(1) === 1;
    const kind = reader.bits(2);
    if (kind === 0) {
      const [low = 0, high = 0] = reader.bytes(4);
      window.putAll(reader.bytes(low | (high << 8)));
    } else if (kind === 1) inflateBlock(reader, window, FIXED_LITERALS, FIXED_DISTANCES);
    else if (kind === 2) inflateBlock(reader, window, ...dynamicCodes(reader));
    else throw damaged('a compressed part has no valid block');
  }
  window.flush();
}

/** Unpacks zlib data whole; see `inflate`. */
export function inflated(packed: Uint8Array, mostBytes: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  inflate(packed, mostBytes, (piece) => pieces.push(piece.slice()));
  return joined(pieces);
}
