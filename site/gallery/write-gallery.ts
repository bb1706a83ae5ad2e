import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PACK_BYTES, PACK_FILE } from './pack.ts';
import { pagePicture } from './page-picture.ts';

// Drawn at each build: four seconds for some 50 pages, and stored pictures would be outdated.

const PICTURE_WIDTH_PX = 780;
const WEBP_QUALITY = 80;

export const pictureName = (page: number): string => `page-${String(page).padStart(2, '0')}.webp`;

/** Writes the pack that is shown, and a picture of each of its pages. */
export async function writeGallery(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'pack.pdf'), PACK_BYTES);
  for (let page = 1; page <= PACK_FILE.numPages; page++) {
    const picture = await pagePicture(PACK_FILE, page, PICTURE_WIDTH_PX);
    writeFileSync(join(folder, pictureName(page)), picture.toBuffer('image/webp', WEBP_QUALITY));
  }
}
