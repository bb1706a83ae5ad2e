import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { openFile } from '../../print/read-back.ts';
import type { GreyPicture } from './grey-picture.ts';

const DOTS_AN_INCH = 50;

/** As much as is used of the canvas that the reader brings along for Node. It draws glyphs as outlines, with no font of the machine. */
interface CanvasFactory {
  create(
    width: number,
    height: number,
  ): {
    canvas: HTMLCanvasElement;
    context: { getImageData(x: number, y: number, width: number, height: number): { data: Uint8ClampedArray } };
  };
}

async function pictureOf(page: PDFPageProxy, factory: CanvasFactory): Promise<GreyPicture> {
  const viewport = page.getViewport({ scale: DOTS_AN_INCH / 72 });
  const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
  const { canvas, context } = factory.create(width, height);
  await page.render({ canvas, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  const greys = Uint8Array.from({ length: width * height }, (_, i) => {
    const [red = 0, green = 0, blue = 0] = data.subarray(4 * i, 4 * i + 3);
    return Math.round(((red + green + blue) / 3 / 255) * 15);
  });
  return { width, height, greys };
}

/** Every page of a file as a small grey picture. */
export async function pagePictures(bytes: Uint8Array): Promise<GreyPicture[]> {
  const file = await openFile(bytes);
  const { canvasFactory } = file as unknown as { canvasFactory: CanvasFactory };
  const pictures: GreyPicture[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    pictures.push(await pictureOf(await file.getPage(number), canvasFactory));
  }
  await file.loadingTask.destroy();
  return pictures;
}
