import { inEnglish, phrase } from '../../words/words.ts';
import { inflated } from '../bytes/inflate.ts';
import { withoutPredictor } from '../bytes/predictor.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { fromAscii85, fromAsciiHex } from './ascii-filters.ts';
import { dictionaryOf, isArray, nameOf, type PdfDictionary, type PdfObject } from './pdf-object.ts';
import { fromLzw, fromRunLength } from './run-filters.ts';

/** Follows a reference to what it stands for. */
export type Resolve = (object: PdfObject | undefined) => PdfObject;

/** The filters of a stream, first to undo first, by their full names. */
export function filtersOf(dictionary: PdfDictionary, resolve: Resolve): string[] {
  const filter = resolve(dictionary.get('Filter'));
  const named = isArray(filter) ? filter : filter === null ? [] : [filter];
  return named.map((each) => nameOf(resolve(each)));
}

function parametersOf(dictionary: PdfDictionary, index: number, resolve: Resolve): PdfDictionary {
  const given = resolve(dictionary.get('DecodeParms'));
  return dictionaryOf(resolve(isArray(given) ? given[index] : given));
}

function decodeOne(bytes: Uint8Array, filter: string, mostBytes: number, early: number): Uint8Array {
  switch (filter) {
    case 'FlateDecode':
      return inflated(bytes, mostBytes);
    case 'LZWDecode':
      return fromLzw(bytes, early, mostBytes);
    case 'ASCIIHexDecode':
      return fromAsciiHex(bytes);
    case 'ASCII85Decode':
      return fromAscii85(bytes);
    case 'RunLengthDecode':
      return fromRunLength(bytes, mostBytes);
    default:
      throw damaged(inEnglish`a part is packed in a way that is not known: ${filter}`);
  }
}

// Filters one upon another can each unpack to the bound; real files have two at the most.
const MOST_FILTERS = 4;

/** Undoes all filters of a stream that holds text or objects (ISO 32000-1, 7.4). Refuses what is damaged or unpacks to too much. */
export function decodeStream(
  bytes: Uint8Array,
  dictionary: PdfDictionary,
  resolve: Resolve,
  mostBytes: number,
): Uint8Array {
  const filters = filtersOf(dictionary, resolve);
  if (filters.length > MOST_FILTERS) throw damaged(phrase`a part is packed too many times over`);
  let decoded = bytes;
  filters.forEach((filter, index) => {
    const parameters = parametersOf(dictionary, index, resolve);
    const value = (key: string, otherwise: number): number => {
      const given = resolve(parameters.get(key));
      return typeof given === 'number' ? given : otherwise;
    };
    decoded = decodeOne(decoded, filter, mostBytes, value('EarlyChange', 1));
    const predictor = value('Predictor', 1);
    if (predictor === 1) return;
    if (predictor < 10) throw damaged(phrase`a predictor is not to be understood`);
    decoded = withoutPredictor(decoded, value('Columns', 1), value('Colors', 1) * value('BitsPerComponent', 8));
  });
  if (decoded.length > mostBytes) throw new RefusedError('too-large', phrase`a part unpacks to more than it may`);
  return decoded;
}
