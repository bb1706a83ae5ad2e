import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import { RefusedError } from '../refusal.ts';

/**
 * Rotation and mirroring from the stored picture to the upright one, as in tag 274 of TIFF 6.0: 1 is as stored, 5 to 8
 * lie on their side.
 */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** A photograph: its samples and its orientation. */
export interface Picture {
  kind: 'jpeg' | 'png';
  /** Upright, as seen. */
  widthPx: number;
  heightPx: number;
  orientation: Orientation;
  /** As stored. */
  columns: number;
  rows: number;
  /** Pixels unpacked to make the PDF image; 0 if the samples stay unchanged. */
  unpackedPixels: number;
  /** Returns the PDF image of the picture: made on demand, so that pictures are unpacked one after another. */
  image: () => PdfImage;
}

/** An image in PDF (ISO 32000-1, 8.9.5), without location, camera or software data. */
export interface PdfImage {
  colourSpace: string;
  bitsPerComponent: number;
  /** Packed samples, with the entries that describe their packing. */
  samples: { encoded: Uint8Array; filter: string; parameters: string };
}

/** Returns a picture as seen. Refuses one with more pixels than a pack accepts. */
export function pictureOf(given: Omit<Picture, 'widthPx' | 'heightPx'>): Picture {
  const { columns, rows, orientation } = given;
  if (columns * rows > LIMITS.imagePixels)
    throw new RefusedError(
      'too-large',
      fault('picture-pixels-million-most', { columns, rows, imagePixels: LIMITS.imagePixels / 1e6 }),
    );
  const [widthPx, heightPx] = orientation < 5 ? [columns, rows] : [rows, columns];
  return { ...given, widthPx, heightPx };
}
