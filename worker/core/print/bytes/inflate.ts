import pako from 'pako';
import { fault } from '../../text/faults.ts';
import { damaged } from '../refusal.ts';
import type { Budget } from './budget.ts';
import { GrowingBytes } from './growing-bytes.ts';

/** Takes what was unpacked, piece by piece. A piece is valid only during the call. */
export type Sink = (piece: Uint8Array) => void;

const PIECE_BYTES = 65_536;

/**
 * Unpacks zlib data (RFC 1950) piece by piece, so that nobody's memory is filled by what was packed to do so. What takes the pieces
 * counts them.
 *
 * Refuses what ends early or is not valid as damaged. Bytes after the end are let pass, as readers of PDF do.
 */
export function inflate(packed: Uint8Array, sink: Sink): void {
  const unpacking = new pako.Inflate({ chunkSize: PIECE_BYTES });
  let isWhole = false;
  unpacking.onData = (data): void => sink(data as Uint8Array);
  unpacking.onEnd = (status): void => {
    isWhole = Number(status) === 0;
  };
  // Told that more may come, it ends only where the data say that they do.
  unpacking.push(packed as Uint8Array<ArrayBuffer>, false);
  if (!isWhole) throw damaged(fault('compressed-part-ends-early-not-valid'));
}

/** Unpacks zlib data whole, charged as what is held; see `inflate`. */
export function inflated(packed: Uint8Array, budget: Budget): Uint8Array {
  const whole = new GrowingBytes();
  inflate(packed, (piece) => {
    budget.spend('unpackedBytes', piece.length);
    whole.putAll(piece);
  });
  return whole.taken();
}
