import { fault } from '../../text/faults.ts';
import { damaged } from '../refusal.ts';

// Returns the neighbour nearest to the plane of the three (PNG, third edition, 9.4).
function paeth(left: number, above: number, corner: number): number {
  const estimate = left + above - corner;
  const [byLeft, byAbove, byCorner] = [
    Math.abs(estimate - left),
    Math.abs(estimate - above),
    Math.abs(estimate - corner),
  ];
  if (byLeft <= byAbove && byLeft <= byCorner) return left;
  return byAbove <= byCorner ? above : corner;
}

/**
 * Reverses the filter of a row in place (PNG, third edition, 9.2). The first byte of both rows is the filter; `above`
 * is already reversed and zeros for the first row; `step` is the bytes of a pixel.
 */
export function unfiltered(row: Uint8Array, above: Uint8Array, step: number): void {
  const filter = row[0];
  if (filter === 0) return;
  for (let i = 1; i < row.length; i++) {
    const left = i > step ? (row[i - step] ?? 0) : 0;
    const up = above[i] ?? 0;
    let guess = 0;
    if (filter === 1) guess = left;
    else if (filter === 2) guess = up;
    else if (filter === 3) guess = (left + up) >> 1;
    else if (filter === 4) guess = paeth(left, up, i > step ? (above[i - step] ?? 0) : 0);
    row[i] = (row[i] ?? 0) + guess;
  }
}

/** Reverses the PNG predictors of a PDF stream (ISO 32000-1, 7.4.4.4). */
export function withoutPredictor(bytes: Uint8Array, columns: number, bitsPerPixel: number): Uint8Array {
  const rowBytes = 1 + Math.ceil((columns * bitsPerPixel) / 8);
  if (!(columns > 0 && bitsPerPixel > 0 && rowBytes <= bytes.length + 1))
    throw damaged(fault('predictor-not-understood'));
  const rows = Math.floor(bytes.length / rowBytes);
  const plain = new Uint8Array(rows * (rowBytes - 1));
  let above = new Uint8Array(rowBytes);
  let row = new Uint8Array(rowBytes);
  for (let i = 0; i < rows; i++) {
    row.set(bytes.subarray(i * rowBytes, (i + 1) * rowBytes));
    unfiltered(row, above, Math.max(1, bitsPerPixel >> 3));
    plain.set(row.subarray(1), i * (rowBytes - 1));
    [above, row] = [row, above];
  }
  return plain;
}
