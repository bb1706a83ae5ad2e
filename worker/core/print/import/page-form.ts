import { fault } from '../../text/faults.ts';
import { bytesOfText, joined } from '../bytes/byte-text.ts';
import type { Matrix } from '../matrix.ts';
import {
  isArray,
  isStream,
  nameObject,
  type PdfDictionary,
  type PdfObject,
  type PdfReference,
  type PdfStream,
} from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import { appearancesOf } from './appearances.ts';
import { type Box, pageView } from './page-box.ts';
import type { PdfCopier } from './pdf-copier.ts';
import type { PdfFile } from './pdf-file.ts';

/** A page as a form XObject: from its lower left corner as seen, in points. */
export interface PageForm {
  form: PdfReference;
  widthPt: number;
  heightPt: number;
}

const LINE_FEED = Uint8Array.of(10);

// Content in several streams is cut between lexical units (ISO 32000-1, 7.8.2).
function contentOf(page: PdfDictionary, file: PdfFile): Uint8Array {
  const contents = file.resolve(page.get('Contents'));
  const streams = isArray(contents) ? contents : contents === null ? [] : [contents];
  const pieces = streams.map((each) => {
    const stream = file.resolve(each);
    if (!isStream(stream)) throw damaged(fault('content-page-missing'));
    return file.decode(stream);
  });
  const [only] = pieces;
  if (pieces.length === 1 && only) return only;
  file.budget.spend(
    'unpackedBytes',
    pieces.reduce((sum, piece) => sum + piece.length + 1, 0),
  );
  return joined(pieces.flatMap((piece) => [piece, LINE_FEED]));
}

function formEntries(box: Box, matrix: Matrix, resources: PdfObject): [string, PdfObject][] {
  return [
    ['Type', nameObject('XObject')],
    ['Subtype', nameObject('Form')],
    ['BBox', box],
    ['Matrix', matrix],
    ['Resources', resources],
  ];
}

const operator = (matrix: Matrix): string => `${matrix.map((each) => Number(each.toFixed(6))).join(' ')} cm`;

/**
 * Takes over a page. Its own group is left out: the page it comes to stand on is one itself, with nothing beneath the form.
 * The looks of annotations are drawn over it.
 */
export function pageForm(page: PdfDictionary, file: PdfFile, carrier: PdfCopier): PageForm {
  const { box, matrix, widthPt, heightPt } = pageView(page, file.resolve);
  const given = page.get('Resources') ?? null;
  const entries = formEntries(box, matrix, carrier.pageResources(given, box));
  const form = carrier.add(carrier.content(contentOf(page, file), entries, page, given));
  const looks = appearancesOf(page, file.resolve);
  const named = looks.map((look, i): [string, PdfObject] => {
    const carried = carrier.carry(look.form);
    return [`A${i}`, isStream(carried) ? carrier.add(carried) : carried];
  });
  carrier.chargePage(
    page,
    looks.map((look) => file.resolve(look.form)),
  );
  if (looks.length === 0) return { form, widthPt, heightPt };
  const drawn = looks.map((look, i) => `q ${operator(matrix)} ${operator(look.matrix)} /A${i} Do Q`);
  const resources = new Map([['XObject', new Map<string, PdfObject>([['P', form], ...named])]]);
  const over: PdfStream = {
    kind: 'stream',
    dictionary: new Map(formEntries([0, 0, widthPt, heightPt], [1, 0, 0, 1, 0, 0], resources)),
    bytes: bytesOfText(['/P Do', ...drawn].join('\n')),
  };
  return { form: carrier.add(over), widthPt, heightPt };
}
