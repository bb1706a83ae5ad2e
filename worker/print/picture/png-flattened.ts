import type { PdfImage } from './picture.ts';
import type { PngHeader } from './png-header.ts';
import { readRows } from './png-rows.ts';

/** What else the samples need to be understood. `key` is the one colour that is transparent (PNG, third edition, 11.3.1.1). */
export interface PngColours {
  palette: Uint8Array;
  key: Uint8Array | undefined;
}

// The sample at an index, as it is packed.
function sampleAt(row: Uint8Array, index: number, bitDepth: number): number {
  if (bitDepth === 8) return row[index] ?? 0;
  if (bitDepth === 16) return ((row[2 * index] ?? 0) << 8) | (row[2 * index + 1] ?? 0);
  const bit = index * bitDepth;
  return ((row[bit >> 3] ?? 0) >> (8 - bitDepth - (bit & 7))) & (2 ** bitDepth - 1);
}

/** The samples at 8 bits, laid on white where they are transparent, so that no soft mask is needed. Holds the whole picture. */
export function flattened(packed: Uint8Array, header: PngHeader, { palette, key }: PngColours): PdfImage {
  const { columns, rows, bitDepth, channels, hasAlpha, hasPalette } = header;
  const colours = channels - (hasAlpha ? 1 : 0);
  const shown = hasPalette ? 3 : colours;
  const full = 2 ** bitDepth - 1;
  const plain = new Uint8Array(columns * rows * shown);
  const keys = key && Array.from({ length: colours }, (_, i) => sampleAt(key, i, 16));
  readRows(packed, header, (row, pass, index) => {
    const lineStart = (pass.y + index * pass.stepY) * columns;
    for (let i = 0; i < pass.columns; i++) {
      const to = (lineStart + pass.x + i * pass.stepX) * shown;
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
  });
  return { colourSpace: shown === 1 ? '/DeviceGray' : '/DeviceRGB', bitsPerComponent: 8, samples: { plain } };
}
