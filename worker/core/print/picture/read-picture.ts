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

/** Reads a picture by its content. `verify` checks all samples if the format permits. Throws `RefusedError`. */
export function readPicture(bytes: Uint8Array, verify: boolean, budget: Budget = new Budget()): Picture {
  if (isJpeg(bytes)) return readJpeg(bytes);
  if (isPng(bytes)) return readPng(bytes, verify, budget);
  throw unknownType();
}

/**
 * Returns the same picture without Exif, XMP, comments, thumbnails, location and camera data, and without data after
 * its end. The samples stay unchanged: a picture that lies on its side keeps Exif data with only its orientation, which
 * viewers use.
 *
 * @throws for a file that is not a picture to `inspectAttachment`
 */
export function cleanImage(bytes: Uint8Array): Uint8Array {
  if (isJpeg(bytes)) return cleanJpeg(bytes);
  if (isPng(bytes)) return cleanPng(bytes);
  throw unknownType();
}
