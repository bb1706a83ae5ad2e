import { Budget } from '../bytes/budget.ts';
import { unknownType } from '../refusal.ts';
import { cleanJpeg, isJpeg, readJpeg } from './jpeg.ts';
import type { Picture } from './picture.ts';
import { cleanPng, readPng } from './png.ts';
import { isPng } from './png-chunks.ts';

/** Whether bytes begin as a picture of a known kind. */
export function isPicture(bytes: Uint8Array): boolean {
  return isJpeg(bytes) || isPng(bytes);
}

/** Reads a picture by its content. `verify` goes through all samples where they can be gone through. Throws `RefusedError`. */
export function readPicture(bytes: Uint8Array, verify: boolean, budget: Budget = new Budget()): Picture {
  if (isJpeg(bytes)) return readJpeg(bytes);
  if (isPng(bytes)) return readPng(bytes, verify, budget);
  throw unknownType();
}

/**
 * The same picture without Exif, XMP, comments, thumbnails, place and camera data, and without whatever stands after its end. The
 * samples are not touched: a picture that lies on its side keeps Exif data with its orientation and nothing else, which viewers honour.
 *
 * @throws for a file that `inspectAttachment` does not call a picture
 */
export function cleanImage(bytes: Uint8Array): Uint8Array {
  if (isJpeg(bytes)) return cleanJpeg(bytes);
  if (isPng(bytes)) return cleanPng(bytes);
  throw unknownType();
}
