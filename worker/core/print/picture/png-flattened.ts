import type { Budget } from '../bytes/budget.ts';
import { Deflation } from '../file/deflate.ts';
import type { PdfImage } from './picture.ts';
import type { PngHeader } from './png-header.ts';
import { type Pass, readRows } from './png-rows.ts';

/** Colour data of the samples. `key` is the one colour that is transparent (PNG, third edition, 11.3.1.1). */
export interface PngColours {
  palette: Uint8Array;
  key: Uint8Array | undefined;
}

// Returns the packed sample at an index.
function sampleAt(row: Uint8Array, index: number, bitDepth: number): number {
  if (bitDepth === 8) return row[index] ?? 0;
  if (bitDepth === 16) return ((row[2 * index] ?? 0) << 8) | (row[2 * index + 1] ?? 0);
  const bit = index * bitDepth;
  return ((row[bit >> 3] ?? 0) >> (8 - bitDepth - (bit & 7))) & (2 ** bitDepth - 1);
}

/** Writes the pixels of a row at 8 bits, laid on white, into `plain`: the first at `at`, each `step` bytes after the one before it. */
type Flatten = (row: Uint8Array, columns: number, plain: Uint8Array, at: number, step: number) => void;

function flattening({ bitDepth, channels, hasAlpha, hasPalette }: PngHeader, { palette, key }: PngColours): Flatten {
  const colours = channels - (hasAlpha ? 1 : 0);
  const full = 2 ** bitDepth - 1;
  const keys = key && Array.from({ length: colours }, (_, i) => sampleAt(key, i, 16));
  return (row, columns, plain, at, step) => {
    for (let i = 0; i < columns; i++) {
      const to = at + i * step;
      const from = i * channels;
      if (hasPalette) {
        const entry = 3 * sampleAt(row, i, bitDepth);
        for (let c = 0; c < 3; c++) plain[to + c] = palette[entry + c] ?? 0;
        continue;
      }
      let share = hasAlpha ? sampleAt(row, from + colours, bitDepth) / full : 1;
      if (keys?.every((value, c) => value === sampleAt(row, from + c, bitDepth))) share = 0;
      for (let c = 0; c < colours; c++) {
        plain[to + c] = Math.round(255 * ((sampleAt(row, from + c, bitDepth) / full) * share + 1 - share));
      }
    }
  };
}

// Rows as differences from the one above, which pack better than the samples (PNG, third edition, 9.2: filter 2).
class PackedRows {
  readonly #deflation = new Deflation();
  readonly #above: Uint8Array;
  readonly #filtered: Uint8Array;

  constructor(rowBytes: number) {
    this.#above = new Uint8Array(rowBytes);
    this.#filtered = new Uint8Array(rowBytes + 1);
    this.#filtered[0] = 2;
  }

  put(row: Uint8Array): void {
    for (let i = 0; i < row.length; i++) this.#filtered[i + 1] = (row[i] ?? 0) - (this.#above[i] ?? 0);
    this.#above.set(row);
    this.#deflation.put(this.#filtered);
  }

  end(): Uint8Array {
    return this.#deflation.end();
  }
}

/**
 * Returns the samples at 8 bits, laid on white if they are transparent, so that no soft mask is needed. Works row by
 * row; only an interlaced picture is whole in memory.
 */
export function flattened(packed: Uint8Array, header: PngHeader, colours: PngColours, budget: Budget): PdfImage {
  const { columns, rows, channels, hasAlpha, hasPalette, isInterlaced } = header;
  const shown = hasPalette ? 3 : channels - (hasAlpha ? 1 : 0);
  const flatten = flattening(header, colours);
  const rowBytes = columns * shown;
  const packing = new PackedRows(rowBytes);
  const plain = new Uint8Array(isInterlaced ? rowBytes * rows : rowBytes);
  readRows(packed, header, budget, (row, pass: Pass, index) => {
    if (!isInterlaced) {
      flatten(row, columns, plain, 0, shown);
      packing.put(plain);
      return;
    }
    const at = ((pass.y + index * pass.stepY) * columns + pass.x) * shown;
    flatten(row, pass.columns, plain, at, pass.stepX * shown);
  });
  if (isInterlaced) for (let y = 0; y < rows; y++) packing.put(plain.subarray(y * rowBytes, (y + 1) * rowBytes));
  return {
    colourSpace: shown === 1 ? '/DeviceGray' : '/DeviceRGB',
    bitsPerComponent: 8,
    samples: {
      encoded: packing.end(),
      filter: '/FlateDecode',
      parameters: `<</Predictor 15/Colors ${shown}/BitsPerComponent 8/Columns ${columns}>>`,
    },
  };
}
