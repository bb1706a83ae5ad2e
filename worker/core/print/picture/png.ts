import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { joined } from '../bytes/byte-text.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { exifOrientation, orientationAsExif } from './exif-orientation.ts';
import { type Orientation, type PdfImage, type Picture, pictureOf } from './picture.ts';
import { type Chunk, chunk, chunksOf, pngOf } from './png-chunks.ts';
import { flattened } from './png-flattened.ts';
import { type PngHeader, pngHeader } from './png-header.ts';
import { readRows } from './png-rows.ts';

const bodyOf = (chunks: readonly Chunk[], wanted: string): Uint8Array | undefined =>
  chunks.find(({ type }) => type === wanted)?.body;

const samplesOf = (chunks: readonly Chunk[]): Uint8Array =>
  joined(chunks.filter(({ type }) => type === 'IDAT').map(({ body }) => body));

function orientationOf(chunks: readonly Chunk[]): Orientation {
  const exif = bodyOf(chunks, 'eXIf');
  return exif ? exifOrientation(exif) : 1;
}

function paletteOf(chunks: readonly Chunk[], { hasPalette, bitDepth }: PngHeader): Uint8Array {
  if (!hasPalette) return new Uint8Array();
  const given = bodyOf(chunks, 'PLTE') ?? new Uint8Array();
  if (given.length === 0 || given.length % 3 !== 0 || given.length > 3 * 2 ** bitDepth)
    throw damaged(fault('picture-no-palette'));
  const alpha = bodyOf(chunks, 'tRNS') ?? new Uint8Array();
  return given.map((value, i) => {
    const share = (alpha[Math.floor(i / 3)] ?? 255) / 255;
    return Math.round(value * share + 255 * (1 - share));
  });
}

const hex = (bytes: Uint8Array): string => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

// Samples that PDF reads in the packing of PNG: Flate with the PNG predictors (ISO 32000-1, 7.4.4.4).
function asStored(chunks: readonly Chunk[], header: PngHeader, palette: Uint8Array): PdfImage {
  const { columns, bitDepth, channels } = header;
  const plain = channels === 1 ? '/DeviceGray' : '/DeviceRGB';
  return {
    colourSpace: header.hasPalette ? `[/Indexed/DeviceRGB ${palette.length / 3 - 1}<${hex(palette)}>]` : plain,
    bitsPerComponent: bitDepth,
    samples: {
      encoded: samplesOf(chunks),
      filter: '/FlateDecode',
      parameters: `<</Predictor 15/Colors ${channels}/BitsPerComponent ${bitDepth}/Columns ${columns}>>`,
    },
  };
}

/** Reads a PNG (PNG, third edition). `verify` checks all samples, which inspection does once and printing does not repeat. */
export function readPng(bytes: Uint8Array, verify: boolean, budget: Budget): Picture {
  const chunks = chunksOf(bytes);
  const header = pngHeader(chunks);
  const { columns, rows, hasAlpha, hasPalette, isInterlaced } = header;
  const palette = paletteOf(chunks, header);
  const key = hasPalette ? undefined : bodyOf(chunks, 'tRNS');
  const mustUnpack = isInterlaced || hasAlpha || key !== undefined;
  const picture = pictureOf({
    kind: 'png',
    orientation: orientationOf(chunks),
    columns,
    rows,
    image: () =>
      mustUnpack ? flattened(samplesOf(chunks), header, { palette, key }, budget) : asStored(chunks, header, palette),
    unpackedPixels: mustUnpack ? columns * rows : 0,
  });
  if (mustUnpack && columns * rows > LIMITS.imageUnpackedPixels)
    throw new RefusedError(
      'too-large',
      fault('picture-transparent-interlaced-pixels-million-most', {
        columns,
        rows,
        imageUnpackedPixels: LIMITS.imageUnpackedPixels / 1e6,
      }),
    );
  if (verify) readRows(samplesOf(chunks), header, budget);
  return picture;
}

// Samples, and the meaning of their colours.
const KEPT = new Set(['IHDR', 'PLTE', 'tRNS', 'gAMA', 'cHRM', 'sRGB', 'IDAT', 'IEND']);

/** Returns the PNG without metadata, and without data after its end; its orientation stays. */
export function cleanPng(bytes: Uint8Array): Uint8Array {
  const chunks = chunksOf(bytes);
  const orientation = orientationOf(chunks);
  const [header, ...others] = chunks.filter(({ type }) => KEPT.has(type)).map((each) => each.bytes);
  const exif = orientation === 1 ? [] : [chunk('eXIf', orientationAsExif(orientation))];
  return pngOf([...(header ? [header] : []), ...exif, ...others]);
}
