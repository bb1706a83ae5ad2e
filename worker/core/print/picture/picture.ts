import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import { RefusedError } from '../refusal.ts';

/** How the stored picture is turned and mirrored to be seen upright, as in tag 274 of TIFF 6.0: 1 is as stored, 5 to 8 lie on their side. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** A photograph: where its samples are, and how they are seen. */
export interface Picture {
  kind: 'jpeg' | 'png';
  /** As seen, upright. */
  widthPx: number;
  heightPx: number;
  orientation: Orientation;
  /** As stored. */
  columns: number;
  rows: number;
  /** Pixels that are unpacked to make the PDF image; 0 where the samples stay as they are. */
  unpackedPixels: number;
  /** The PDF image that shows it: made when it is asked for, so that pictures are unpacked one after another. */
  image: () => PdfImage;
}

/** An image as PDF holds it (ISO 32000-1, 8.9.5), without location, camera or software data. */
export interface PdfImage {
  colourSpace: string;
  bitsPerComponent: number;
  /** The samples as they are packed, with the entries that say how. */
  samples: { encoded: Uint8Array; filter: string; parameters: string };
}

/** A picture as seen. Refuses one with more pixels than a pack takes. */
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
