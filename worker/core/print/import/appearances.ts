import { fault } from '../../text/faults.ts';
import type { Matrix } from '../matrix.ts';
import {
  dictionaryOf,
  isArray,
  isStream,
  nameOf,
  type PdfDictionary,
  type PdfObject,
  type PdfStream,
} from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import type { Resolve } from './decode-stream.ts';
import { type Box, boxOf } from './page-box.ts';

/** The look of an annotation, and where it is drawn on its page. */
export interface Appearance {
  form: PdfObject;
  matrix: Matrix;
}

// ISO 32000-1, table 165.
const HIDDEN = 2;
const NO_VIEW = 32;

// They show nothing on the page itself.
const UNSEEN = new Set(['Link', 'Popup']);

// Far beyond any page (ISO 32000-1, annex C.2).
const MAX = 1e9;

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

function matrixOf(object: PdfObject, resolve: Resolve): Matrix {
  if (!isArray(object) || object.length !== IDENTITY.length) return IDENTITY;
  const numbers = object.map((each) => resolve(each)).filter((each) => typeof each === 'number');
  const [a, b, c, d, e, f] = numbers;
  return numbers.length === IDENTITY.length ? [a ?? 1, b ?? 0, c ?? 0, d ?? 1, e ?? 0, f ?? 0] : IDENTITY;
}

// The box around a box that a matrix has turned.
function mapped([x0, y0, x1, y1]: Box, [a, b, c, d, e, f]: Matrix): Box {
  const corners = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ].map(([x = 0, y = 0]) => [a * x + c * y + e, b * x + d * y + f] as const);
  const [across, up] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  return [Math.min(...across), Math.min(...up), Math.max(...across), Math.max(...up)];
}

// The box of the appearance is fitted into the rectangle of the annotation (ISO 32000-1, 12.5.5).
function fitting(form: PdfStream, rectangle: Box, resolve: Resolve): Matrix | null {
  const box = boxOf(resolve(form.dictionary.get('BBox')), resolve);
  if (!box) return null;
  const [x0, y0, x1, y1] = mapped(box, matrixOf(resolve(form.dictionary.get('Matrix')), resolve));
  if (!(x1 > x0 && y1 > y0)) return null;
  const [across, up] = [(rectangle[2] - rectangle[0]) / (x1 - x0), (rectangle[3] - rectangle[1]) / (y1 - y0)];
  const matrix: Matrix = [across, 0, 0, up, rectangle[0] - x0 * across, rectangle[1] - y0 * up];
  if (!matrix.every((each) => Math.abs(each) <= MAX)) throw damaged(fault('note-page-no-size-can-drawn'));
  return matrix;
}

function normalAppearance(annotation: PdfDictionary, resolve: Resolve): PdfObject | undefined {
  const normal = dictionaryOf(resolve(annotation.get('AP'))).get('N');
  if (isStream(resolve(normal))) return normal;
  return dictionaryOf(resolve(normal)).get(nameOf(resolve(annotation.get('AS'))));
}

// Such a field is drawn by the viewer, each in its own way.
function isFilledWithoutLook(annotation: PdfDictionary, resolve: Resolve): boolean {
  if (nameOf(resolve(annotation.get('Subtype'))) !== 'Widget' || annotation.has('AP')) return false;
  const value = resolve(annotation.get('V')) ?? resolve(dictionaryOf(resolve(annotation.get('Parent'))).get('V'));
  return value !== null;
}

/**
 * What the annotations of a page look like: stamps, notes, and fields that are filled in, for what is written in a form is part of the paper.
 * Refuses a page with a filled field that has no look of its own.
 */
export function appearancesOf(page: PdfDictionary, resolve: Resolve): Appearance[] {
  const annotations = resolve(page.get('Annots'));
  return (isArray(annotations) ? annotations : []).flatMap((each): Appearance[] => {
    const annotation = dictionaryOf(resolve(each));
    const flags = Number(resolve(annotation.get('F')) ?? 0);
    if ((flags & (HIDDEN | NO_VIEW)) !== 0 || UNSEEN.has(nameOf(resolve(annotation.get('Subtype'))))) return [];
    if (isFilledWithoutLook(annotation, resolve)) throw damaged(fault('field-form-filled-no-look-own'));
    const form = normalAppearance(annotation, resolve);
    const stream = resolve(form);
    const rectangle = boxOf(resolve(annotation.get('Rect')), resolve);
    if (form === undefined || !isStream(stream) || !rectangle) return [];
    const matrix = fitting(stream, rectangle, resolve);
    return matrix ? [{ form, matrix }] : [];
  });
}
