import type { Matrix } from '../matrix.ts';
import { pointsFromMm } from '../paper.ts';
import type { Markup } from '../parse/markup.ts';
import type { Orientation } from '../picture/picture.ts';
import type { LayoutContext } from './layout-context.ts';
import { type Strip, strip } from './strip.ts';
import { childTag } from './tag.ts';

// Min. resolution: below it, the pixels of a photograph are visible in print.
const MIN_PIXELS_PER_INCH = 150;

// Two photographs, each with its heading, caption and digest, fill a page.
const ROOM_BESIDE_PT = 90;

// Returns the matrix from the unit square of an image as stored to its box as seen (ISO 32000-1, 8.9.5.1; TIFF 6.0, tag
// 274).
function seen(orientation: Orientation, width: number, height: number): Matrix {
  const matrices: Readonly<Record<Orientation, Matrix>> = {
    1: [width, 0, 0, height, 0, 0],
    2: [-width, 0, 0, height, width, 0],
    3: [-width, 0, 0, -height, width, height],
    4: [width, 0, 0, -height, 0, height],
    5: [0, -height, -width, 0, width, height],
    6: [0, -height, width, 0, 0, height],
    7: [0, height, width, 0, 0, 0],
    8: [0, height, -width, 0, width, 0],
  };
  return matrices[orientation];
}

/**
 * `<img>`: upright, as wide as requested or as the column, with its heading and caption max. half a page high, and
 * never larger than its pixels allow.
 *
 * Throws without `src` or `alt`, and for a source without a picture in the job: templates are ours.
 */
export function photographStrip(image: Markup, setting: LayoutContext): Strip {
  const { src, alt, 'data-width-mm': widthMm } = image.attributes;
  if (!src || !alt) throw new Error('Cannot typeset <img>: src and alt must say what it shows');
  const picture = setting.pictureOf(src);
  const askedPt = widthMm === undefined ? setting.columnPt : pointsFromMm(Number(widthMm));
  const maxHeightPt = Math.max(setting.bodyPt / 2 - ROOM_BESIDE_PT, setting.bodyPt / 4);
  const maxPt = (maxHeightPt * picture.widthPx) / picture.heightPx;
  const sharpPt = (picture.widthPx / MIN_PIXELS_PER_INCH) * 72;
  const widthPt = Math.min(askedPt, setting.columnPt, maxPt, sharpPt);
  const heightPt = (widthPt * picture.heightPx) / picture.widthPx;
  return strip({
    heightPt,
    items: [
      {
        kind: 'picture',
        ...{ xPt: 0, yPt: 0, widthPt, heightPt },
        source: { kind: 'image', picture },
        matrix: seen(picture.orientation, widthPt, heightPt),
        tag: childTag(setting.tag, 'Figure', { alt }),
      },
    ],
  });
}
