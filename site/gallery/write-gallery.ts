import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { PACK_BYTES, PACK_FILE } from './pack.ts';

const PICTURE_WIDTH_PX = 780;
const WEBP_QUALITY = 80;

/** As much as is used of the canvas that the reader brings along for Node. */
interface CanvasFactory {
  create(width: number, height: number): { canvas: { toBuffer(type: 'image/webp', quality: number): Uint8Array } };
}

export const pictureName = (page: number): string => `page-${String(page).padStart(2, '0')}.webp`;

/** Writes the pack that is shown, and a picture of each of its pages. */
export async function writeGallery(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'pack.pdf'), PACK_BYTES);
  for (let page = 1; page <= PACK_FILE.numPages; page++) {
    writeFileSync(join(folder, pictureName(page)), await pictureOf(PACK_FILE, page));
  }
}

async function pictureOf(file: PDFDocumentProxy, number: number): Promise<Uint8Array> {
  const page = await file.getPage(number);
  const viewport = page.getViewport({ scale: PICTURE_WIDTH_PX / page.getViewport({ scale: 1 }).width });
  const { canvasFactory } = file as unknown as { canvasFactory: CanvasFactory };
  const { canvas } = canvasFactory.create(Math.round(viewport.width), Math.round(viewport.height));
  await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport }).promise;
  return canvas.toBuffer('image/webp', WEBP_QUALITY);
}
