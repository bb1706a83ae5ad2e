import type { PlacedPicture } from '../measure/item.ts';
import { number, ratio } from './pdf-text.ts';
import type { Surface } from './surface.ts';

/** Returns the name of a picture in the resources of its page. */
export function pictureName(index: number): string {
  return `X${index}`;
}

/** Draws a picture with the lower left corner of its box at a point of the page. */
export function drawPicture(
  { canvas, structure, pictures }: Surface,
  item: PlacedPicture,
  xPt: number,
  yPt: number,
): void {
  const { matrix, source, tag, widthPt, heightPt } = item;
  const [a, b, c, d, e, f] = matrix;
  const place = `${[a, b, c, d].map(ratio).join(' ')} ${number(xPt + e)} ${number(yPt + f)} cm`;
  canvas.enter(tag);
  canvas.write(`q ${place} /${pictureName(pictures.length)} Do Q`);
  pictures.push(source);
  if (tag) structure.element(tag).box = [xPt, yPt, xPt + widthPt, yPt + heightPt];
}
