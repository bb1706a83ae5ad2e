import { LIMITS } from '../../limits.ts';
import { type Fault, fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { inflate } from '../bytes/inflate.ts';
import { isArray, nameObject, nameOf, type PdfDictionary, type PdfObject, type PdfStream } from '../pdf-object.ts';
import { cleanEmbeddedJpeg } from '../picture/jpeg.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { decodeStream, type Filter, filtersOf, type Resolve } from './decode-stream.ts';

// A picture whose unpacked size cannot be counted is refused: JBIG2 and JPEG 2000 show it only to their decoders,
// and PDF readers of the owner would run those. Flate is unpacked in pieces, the scans of a JPEG are counted, faxes
// (CCITT) get `Rows` and an end. A decoder small enough for the Worker would change this.

/** How a stream is read: what it costs is charged, and what is not held is gone through only where that is asked for. */
export interface Reading {
  resolve: Resolve;
  budget: Budget;
  /** Goes through what is carried as it is, to know that it unpacks, and to how much. What was inspected need not do again. */
  verify: boolean;
}

/** Samples as they are carried, and the entries that say how they are packed: none for plain ones. */
export interface CarriedBytes {
  bytes: Uint8Array;
  packing: [string, PdfObject][];
}

// What some readers let pass after the last row.
const SLACK_BYTES = 4096;

const FAX_COLUMNS = 1728;

// How large the pictures are that these give is known to nobody who does not unpack them.
const UNCOUNTED: ReadonlyMap<string, Fault> = new Map([
  ['JBIG2Decode', fault('picture-packed-jbig2-how-much-unpacks')],
  ['JPXDecode', fault('picture-packed-jpeg2000-how-much')],
]);

/** What a stream unpacks to is charged piece by piece, and never held. */
function goneThrough(bytes: Uint8Array, maxBytes: number, budget: Budget): void {
  let total = 0;
  inflate(bytes, (piece) => {
    budget.spend('passedBytes', piece.length);
    total += piece.length;
    if (!(total <= maxBytes)) throw new RefusedError('too-large', fault('picture-unpacks-more-than-size'));
  });
}

function packed(bytes: Uint8Array, { name, parameters }: Filter): CarriedBytes {
  const entries: [string, PdfObject][] = parameters.size > 0 ? [['DecodeParms', parameters]] : [];
  return { bytes, packing: [['Filter', nameObject(name)], ...entries] };
}

/** A stream that is no image: left packed where it is simply deflated, and unpacked otherwise. */
export function carriedBytes({ dictionary, bytes }: PdfStream, { resolve, budget, verify }: Reading): CarriedBytes {
  const filters = filtersOf(dictionary, resolve);
  if (filters.some(({ name }) => name === 'Crypt')) throw new RefusedError('encrypted', fault('encrypted-part'));
  const [only] = filters;
  if (filters.length !== 1 || only?.name !== 'FlateDecode')
    return { bytes: decodeStream(bytes, filters, resolve, budget), packing: [] };
  if (verify) goneThrough(bytes, Number.POSITIVE_INFINITY, budget);
  return packed(bytes, only);
}

function componentsOf(space: PdfObject, resolve: Resolve): number {
  const [kind, second] = isArray(space) ? space : [space];
  switch (nameOf(resolve(kind))) {
    case 'DeviceGray':
    case 'CalGray':
    case 'Indexed':
    case 'Separation':
      return 1;
    case 'DeviceRGB':
    case 'CalRGB':
    case 'Lab':
      return 3;
    case 'DeviceN': {
      const inks = resolve(second);
      return isArray(inks) ? inks.length : 1;
    }
    default:
      // ICC profiles have four at most, as CMYK has.
      return 4;
  }
}

function numberIn(dictionary: PdfDictionary, key: string, resolve: Resolve): number {
  const value = resolve(dictionary.get(key));
  return typeof value === 'number' ? value : Number.NaN;
}

/** Pixels of an image by its dictionary. Refuses more than a picture may have, and what is no number. */
export function pixelsOf(dictionary: PdfDictionary, resolve: Resolve): number {
  const pixels = numberIn(dictionary, 'Width', resolve) * numberIn(dictionary, 'Height', resolve);
  if (!(pixels <= LIMITS.imagePixels))
    throw new RefusedError(
      'too-large',
      fault('picture-more-than-million-pixels', { imagePixels: LIMITS.imagePixels / 1e6 }),
    );
  return pixels;
}

// Samples and, where each row has one, the byte that says how it is filtered.
function samplesBytes(dictionary: PdfDictionary, resolve: Resolve): number {
  const [columns, rows] = [numberIn(dictionary, 'Width', resolve), numberIn(dictionary, 'Height', resolve)];
  const isMask = resolve(dictionary.get('ImageMask')) === true;
  const bits = dictionary.has('BitsPerComponent') ? numberIn(dictionary, 'BitsPerComponent', resolve) : 8;
  const components = isMask ? 1 : componentsOf(resolve(dictionary.get('ColorSpace')), resolve);
  const rowBytes = Math.ceil((columns * components * (isMask ? 1 : bits)) / 8);
  return rows * (rowBytes + 1) + rowBytes + SLACK_BYTES;
}

function photograph(bytes: Uint8Array, last: Filter, dictionary: PdfDictionary, resolve: Resolve): CarriedBytes {
  const jpeg = cleanEmbeddedJpeg(bytes);
  const isSame =
    jpeg.columns === numberIn(dictionary, 'Width', resolve) && jpeg.rows === numberIn(dictionary, 'Height', resolve);
  if (!isSame) throw damaged(fault('picture-not-size-says'));
  return packed(jpeg.bytes, last);
}

// Readers are told to stop after the rows that the image has, whatever else the data hold (ISO 32000-1, table 11).
function fax(
  bytes: Uint8Array,
  { name, parameters }: Filter,
  dictionary: PdfDictionary,
  resolve: Resolve,
): CarriedBytes {
  const columns = parameters.has('Columns') ? numberIn(parameters, 'Columns', resolve) : FAX_COLUMNS;
  const rows = numberIn(dictionary, 'Height', resolve);
  pixelsOf(
    new Map([
      ['Width', columns],
      ['Height', rows],
    ]),
    resolve,
  );
  return packed(bytes, { name, parameters: new Map([...parameters, ['Rows', rows], ['EndOfBlock', false]]) });
}

/**
 * The samples of an image. A photograph loses what its camera wrote; what is packed otherwise is bounded by the size that the image says, or
 * refused. Filters over the last one are undone.
 */
export function carriedSamples({ dictionary, bytes }: PdfStream, { resolve, budget, verify }: Reading): CarriedBytes {
  const filters = filtersOf(dictionary, resolve);
  if (filters.some(({ name }) => name === 'Crypt')) throw new RefusedError('encrypted', fault('encrypted-part'));
  const uncounted = filters.map(({ name }) => UNCOUNTED.get(name)).find((refusal) => refusal !== undefined);
  if (uncounted !== undefined) throw new RefusedError('unknown-type', uncounted);
  const last = filters.at(-1);
  if (!last) return { bytes, packing: [] };
  const encoded = decodeStream(bytes, filters.slice(0, -1), resolve, budget);
  if (last.name === 'DCTDecode') return photograph(encoded, last, dictionary, resolve);
  if (last.name === 'CCITTFaxDecode') return fax(encoded, last, dictionary, resolve);
  if (last.name === 'FlateDecode') {
    if (verify) goneThrough(encoded, samplesBytes(dictionary, resolve), budget);
    return packed(encoded, last);
  }
  const samples = decodeStream(encoded, [last], resolve, budget);
  if (!(samples.length <= samplesBytes(dictionary, resolve)))
    throw new RefusedError('too-large', fault('picture-unpacks-more-than-size'));
  return { bytes: samples, packing: [] };
}
