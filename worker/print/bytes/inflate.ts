import pako from 'pako';
import { phrase } from '../../words/words.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { joined } from './byte-text.ts';

/** Takes what was unpacked, piece by piece. A piece is valid only during the call. */
export type Sink = (piece: Uint8Array) => void;

const PIECE_BYTES = 65_536;

/**
 * Unpacks zlib data (RFC 1950) piece by piece, so that nobody's memory is filled by what was packed to do so.
 *
 * Refuses what ends early or is not valid as damaged, and more than `mostBytes` as too large. Bytes after the end are let pass, as
 * readers of PDF do.
 */
export function inflate(packed: Uint8Array, mostBytes: number, sink: Sink): void {
  const unpacking = new pako.Inflate({ chunkSize: PIECE_BYTES });
  let total = 0;
  let isWhole = false;
  unpacking.onData = (data): void => {
    const piece = data as Uint8Array;
    total += piece.length;
    if (total > mostBytes) throw new RefusedError('too-large', phrase`a compressed part unpacks to more than it may`);
    sink(piece);
  };
  unpacking.onEnd = (status): void => {
    isWhole = Number(status) === 0;
  };
  // Told that more may come, it ends only where the data say that they do.
  unpacking.push(packed as Uint8Array<ArrayBuffer>, false);
  if (!isWhole) throw damaged(phrase`a compressed part ends early or is not valid`);
}

/** Unpacks zlib data whole; see `inflate`. */
export function inflated(packed: Uint8Array, mostBytes: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  inflate(packed, mostBytes, (piece) => pieces.push(piece.slice()));
  return joined(pieces);
}
