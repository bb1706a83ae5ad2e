import pako from 'pako';
import { fault } from '../../text/faults.ts';
import { damaged } from '../refusal.ts';
import type { Budget } from './budget.ts';
import { GrowingBytes } from './growing-bytes.ts';

/** Callback for unpacked data, piece by piece. A piece is valid only during the call. */
export type Sink = (piece: Uint8Array) => void;

const PIECE_BYTES = 65_536;

/**
 * Unpacks zlib data (RFC 1950) piece by piece, so that a compression bomb cannot fill memory. The sink counts the
 * pieces.
 *
 * Refuses data that end early or are not valid as damaged. Accepts bytes after the end, as readers of PDF do.
 */
export function inflate(packed: Uint8Array, sink: Sink): void {
  const unpacking = new pako.Inflate({ chunkSize: PIECE_BYTES });
  let isWhole = false;
  unpacking.onData = (data): void => sink(data as Uint8Array);
  unpacking.onEnd = (status): void => {
    isWhole = Number(status) === 0;
  };
  // If more input may follow, it ends only at the end marker of the data.
  unpacking.push(packed as Uint8Array<ArrayBuffer>, false);
  if (!isWhole) throw damaged(fault('compressed-part-ends-early-not-valid'));
}

/** Unpacks zlib data whole, charged as kept in memory; see `inflate`. */
export function inflated(packed: Uint8Array, budget: Budget): Uint8Array {
  const whole = new GrowingBytes();
  inflate(packed, (piece) => {
    budget.spend('unpackedBytes', piece.length);
    whole.putAll(piece);
  });
  return whole.taken();
}
