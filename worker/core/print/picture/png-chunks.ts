import { fault } from '../../text/faults.ts';
import { bytesOfText, joined, textOfBytes } from '../bytes/byte-text.ts';
import { damaged } from '../refusal.ts';
import { crc32 } from './crc32.ts';

/** A chunk of a PNG (PNG, third edition, 5.3). `bytes` is all of it. */
export interface Chunk {
  type: string;
  body: Uint8Array;
  bytes: Uint8Array;
}

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

export function isPng(bytes: Uint8Array): boolean {
  return SIGNATURE.every((byte, i) => bytes[i] === byte);
}

/** Returns the chunks up to the end chunk. Refuses a file that ends early or whose codes do not match. */
export function chunksOf(bytes: Uint8Array): Chunk[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: Chunk[] = [];
  for (let at = SIGNATURE.length; ; ) {
    const length = at + 12 <= bytes.length ? view.getUint32(at) : Number.POSITIVE_INFINITY;
    const end = at + 12 + length;
    if (end > bytes.length) throw damaged(fault('picture-ends-early'));
    if (crc32(bytes.subarray(at + 4, end - 4)) !== view.getUint32(end - 4))
      throw damaged(fault('part-picture-not-agree-check-code'));
    const type = textOfBytes(bytes.subarray(at + 4, at + 8));
    chunks.push({ type, body: bytes.subarray(at + 8, end - 4), bytes: bytes.subarray(at, end) });
    if (type === 'IEND') return chunks;
    at = end;
  }
}

/** Returns a chunk as bytes. */
export function chunk(type: string, body: Uint8Array): Uint8Array {
  const coded = joined([bytesOfText(type), body]);
  const bytes = new Uint8Array(coded.length + 8);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, body.length);
  bytes.set(coded, 4);
  view.setUint32(coded.length + 4, crc32(coded));
  return bytes;
}

/** Returns a PNG of chunks. */
export function pngOf(chunks: readonly Uint8Array[]): Uint8Array {
  return joined([SIGNATURE, ...chunks]);
}
