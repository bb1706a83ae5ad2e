import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** As much as is used of the canvas that the reader brings along for Node. */
interface Canvas {
  toBuffer(type: 'image/png' | 'image/webp', quality?: number): Uint8Array;
}

interface CanvasFactory {
  create(width: number, height: number): { canvas: Canvas };
}

/** A page of a file, drawn as wide as is asked for. */
export async function pagePicture(file: PDFDocumentProxy, number: number, widthPx: number): Promise<Canvas> {
  const page = await file.getPage(number);
  const viewport = page.getViewport({ scale: widthPx / page.getViewport({ scale: 1 }).width });
  const { canvasFactory } = file as unknown as { canvasFactory: CanvasFactory };
  const { canvas } = canvasFactory.create(Math.round(viewport.width), Math.round(viewport.height));
  await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport }).promise;
  return canvas;
}
