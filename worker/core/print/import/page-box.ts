import { fault } from '../../text/faults.ts';
import type { Matrix } from '../matrix.ts';
import { isArray, type PdfDictionary, type PdfObject } from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import type { Resolve } from './decode-stream.ts';

/** Left, bottom, right, top. */
export type Box = readonly [number, number, number, number];

/** A page as seen: cropped, turned, in points from its lower left corner. */
export interface PageView {
  box: Box;
  /** From the page's own plane to the page as seen. */
  matrix: Matrix;
  widthPt: number;
  heightPt: number;
}

// ISO 32000-1, annex C.2: pages are from 3 to 14,400 units wide and high.
const [MIN, MAX] = [3, 14_400];

// A page of the largest size in a unit of a metre.
const MAX_UNITS = 5e7;

// Many objects may name one list, and it may be long.
const BOX_ITEMS = 4;

/** Four numbers in any order of corners as a box, or null. */
export function boxOf(object: PdfObject, resolve: Resolve): Box | null {
  if (!isArray(object)) return null;
  const numbers = object
    .slice(0, BOX_ITEMS)
    .map((each) => resolve(each))
    .filter((each) => typeof each === 'number');
  const [x0, y0, x1, y1] = numbers;
  if (x0 === undefined || y0 === undefined || x1 === undefined || y1 === undefined) return null;
  return [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)];
}

function turned([x0, y0, x1, y1]: Box, angleDeg: number): Matrix {
  if (angleDeg === 90) return [0, -1, 1, 0, -y0, x1];
  if (angleDeg === 180) return [-1, 0, 0, -1, x1, y1];
  if (angleDeg === 270) return [0, 1, -1, 0, y1, -x0];
  return [1, 0, 0, 1, -x0, -y0];
}

/** How a page is seen: crop box within media box, `Rotate`, `UserUnit`. Refuses a page without a size. */
export function pageView(page: PdfDictionary, resolve: Resolve): PageView {
  const media = boxOf(resolve(page.get('MediaBox')), resolve);
  if (!media) throw damaged(fault('page-no-size'));
  const crop = boxOf(resolve(page.get('CropBox')), resolve) ?? media;
  const box: Box = [
    Math.max(media[0], crop[0]),
    Math.max(media[1], crop[1]),
    Math.min(media[2], crop[2]),
    Math.min(media[3], crop[3]),
  ];
  const [width, height] = [box[2] - box[0], box[3] - box[1]];
  if (!(Math.min(width, height) >= MIN && Math.max(width, height) <= MAX)) throw damaged(fault('page-no-size'));
  const rotate = resolve(page.get('Rotate'));
  const angleDeg = typeof rotate === 'number' ? (((Math.round(rotate / 90) * 90) % 360) + 360) % 360 : 0;
  const given = resolve(page.get('UserUnit'));
  const unit = typeof given === 'number' && given > 0 ? given : 1;
  if (!(Math.max(width, height) * unit <= MAX_UNITS)) throw damaged(fault('page-no-size'));
  const [a, b, c, d, e, f] = turned(box, angleDeg);
  const [across, up] = angleDeg % 180 === 0 ? [width, height] : [height, width];
  return {
    box,
    matrix: [a * unit, b * unit, c * unit, d * unit, e * unit, f * unit],
    widthPt: across * unit,
    heightPt: up * unit,
  };
}
