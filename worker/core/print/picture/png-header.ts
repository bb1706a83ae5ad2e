import { fault } from '../../text/faults.ts';
import { damaged } from '../refusal.ts';
import type { Chunk } from './png-chunks.ts';

/** Format of the samples in the header (PNG, third edition, 11.2.1). */
export interface PngHeader {
  columns: number;
  rows: number;
  bitDepth: number;
  /** An index into a palette counts as one channel. */
  channels: number;
  hasPalette: boolean;
  hasAlpha: boolean;
  isInterlaced: boolean;
}

// Colour type: channels, whether alpha is among them, and the bit depths allowed with it (PNG, table 8).
const COLOUR_TYPES: Readonly<Record<number, { channels: number; hasAlpha: boolean; depths: readonly number[] }>> = {
  0: { channels: 1, hasAlpha: false, depths: [1, 2, 4, 8, 16] },
  2: { channels: 3, hasAlpha: false, depths: [8, 16] },
  3: { channels: 1, hasAlpha: false, depths: [1, 2, 4, 8] },
  4: { channels: 2, hasAlpha: true, depths: [8, 16] },
  6: { channels: 4, hasAlpha: true, depths: [8, 16] },
};

/** Reads the header. Refuses values outside the format. */
export function pngHeader(chunks: readonly Chunk[]): PngHeader {
  const [first] = chunks;
  if (first?.type !== 'IHDR' || first.body.length !== 13) throw damaged(fault('picture-not-say-what-holds'));
  const view = new DataView(first.body.buffer, first.body.byteOffset, first.body.length);
  const [columns, rows] = [view.getUint32(0), view.getUint32(4)];
  const [bitDepth, colourType, compression, filter, interlace] = [8, 9, 10, 11, 12].map((at) => view.getUint8(at));
  const colour = COLOUR_TYPES[colourType ?? -1];
  const isKnown = colour?.depths.includes(bitDepth ?? 0) && compression === 0 && filter === 0 && (interlace ?? 2) < 2;
  if (!colour || !isKnown || columns === 0 || rows === 0) throw damaged(fault('picture-not-say-what-holds'));
  const { channels, hasAlpha } = colour;
  return {
    columns,
    rows,
    bitDepth: bitDepth ?? 8,
    channels,
    hasPalette: colourType === 3,
    hasAlpha,
    isInterlaced: interlace === 1,
  };
}
