import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { inflate } from '../bytes/inflate.ts';
import { unfiltered } from '../bytes/predictor.ts';
import { damaged, RefusedError } from '../refusal.ts';
import type { PngHeader } from './png-header.ts';

/** A picture, or one of the seven coarse passes of an interlaced picture: the positions of its samples in the whole. */
export interface Pass {
  x: number;
  y: number;
  stepX: number;
  stepY: number;
  columns: number;
  rows: number;
}

// PNG, third edition, 8.2.
const ADAM7 = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

function passesOf({ columns, rows, isInterlaced }: PngHeader): Pass[] {
  const grids = isInterlaced ? ADAM7 : ([[0, 0, 1, 1]] as const);
  return grids
    .map(([x, y, stepX, stepY]) => ({
      ...{ x, y, stepX, stepY },
      columns: Math.ceil((columns - x) / stepX),
      rows: Math.ceil((rows - y) / stepY),
    }))
    .filter((pass) => pass.columns > 0 && pass.rows > 0);
}

// A row takes as much time as this number of bytes, however short it is.
const BYTES_PER_ROW = 64;

/**
 * Unpacks the samples row by row, so that up to two rows are in memory, and passes each to `take`: the samples as
 * packed bytes, valid only during the call. Without `take` the data are only checked. Refuses data of another length
 * than the header requires.
 */
export function readRows(
  packed: Uint8Array,
  header: PngHeader,
  budget: Budget,
  take?: (row: Uint8Array, pass: Pass, index: number) => void,
): void {
  const bitsPerPixel = header.channels * header.bitDepth;
  const passes = passesOf(header);
  const rowBytes = (pass: Pass): number => 1 + Math.ceil((pass.columns * bitsPerPixel) / 8);
  const wanted = passes.reduce((total, pass) => total + rowBytes(pass) * pass.rows, 0);
  let [at, index, filled, seen] = [0, 0, 0, 0];
  let pass = passes[at];
  let row = new Uint8Array(pass ? rowBytes(pass) : 0);
  let above = new Uint8Array(row.length);
  const finishRow = (current: Pass): void => {
    budget.spend('passedBytes', BYTES_PER_ROW);
    if ((row[0] ?? 5) > 4) throw damaged(fault('picture-row-no-known-filter'));
    if (take) {
      unfiltered(row, above, Math.max(1, bitsPerPixel >> 3));
      take(row.subarray(1), current, index);
    }
    [above, row] = [row, above];
    filled = 0;
    if (++index < current.rows) return;
    index = 0;
    pass = passes[++at];
    row = new Uint8Array(pass ? rowBytes(pass) : 0);
    above = new Uint8Array(row.length);
  };
  inflate(packed, (piece) => {
    budget.spend('passedBytes', piece.length);
    seen += piece.length;
    if (seen > wanted) throw new RefusedError('too-large', fault('compressed-part-unpacks-more-than-may'));
    for (let from = 0; pass && from < piece.length; ) {
      const part = piece.subarray(from, from + row.length - filled);
      row.set(part, filled);
      filled += part.length;
      from += part.length;
      if (filled === row.length) finishRow(pass);
    }
  });
  if (seen < wanted) throw damaged(fault('picture-ends-early'));
}
