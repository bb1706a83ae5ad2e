import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { inflated } from '../bytes/inflate.ts';
import { withoutPredictor } from '../bytes/predictor.ts';
import { shortName } from '../bytes/short-name.ts';
import { dictionaryOf, isArray, nameOf, type PdfDictionary, type PdfObject } from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import { fromAscii85, fromAsciiHex } from './ascii-filters.ts';
import { fromLzw, fromRunLength } from './run-filters.ts';

/** Follows a reference to what it stands for. */
export type Resolve = (object: PdfObject | undefined) => PdfObject;

/** A filter of a stream by its full name, with its parameters. */
export interface Filter {
  name: string;
  parameters: PdfDictionary;
}

// ISO 32000-1, 7.4.4.4.
const PREDICTED = new Set(['FlateDecode', 'LZWDecode']);

// Filters one upon another can each unpack to the bound; real files have two at the most.
const MAX_FILTERS = 4;

// ISO 32000-1, table 94.
const FULL_FILTERS: ReadonlyMap<string, string> = new Map([
  ['AHx', 'ASCIIHexDecode'],
  ['A85', 'ASCII85Decode'],
  ['LZW', 'LZWDecode'],
  ['Fl', 'FlateDecode'],
  ['RL', 'RunLengthDecode'],
  ['CCF', 'CCITTFaxDecode'],
  ['DCT', 'DCTDecode'],
]);

/** A filter by its full name: images within content may name it shortly, and careless writers do so elsewhere. */
export function fullFilterName(name: string): string {
  return FULL_FILTERS.get(name) ?? name;
}

/** The filters of a stream, first to undo first. Refuses more than any real file has. */
export function filtersOf(dictionary: PdfDictionary, resolve: Resolve): Filter[] {
  const filter = resolve(dictionary.get('Filter'));
  const named = isArray(filter) ? filter : filter === null ? [] : [filter];
  if (named.length > MAX_FILTERS) throw damaged(fault('part-packed-too-many-times-over'));
  const given = resolve(dictionary.get('DecodeParms'));
  return named.map((each, i) => ({
    name: fullFilterName(nameOf(resolve(each))),
    parameters: dictionaryOf(resolve(isArray(given) ? given[i] : given)),
  }));
}

function undone(bytes: Uint8Array, filter: string, early: number, budget: Budget): Uint8Array {
  switch (filter) {
    case 'FlateDecode':
      return inflated(bytes, budget);
    case 'LZWDecode':
      return fromLzw(bytes, early, budget);
    case 'ASCIIHexDecode':
      return fromAsciiHex(bytes, budget);
    case 'ASCII85Decode':
      return fromAscii85(bytes, budget);
    case 'RunLengthDecode':
      return fromRunLength(bytes, budget);
    default:
      throw damaged(fault('part-packed-way-not-known', { filter: shortName(filter) }));
  }
}

/** Undoes filters (ISO 32000-1, 7.4), each charged for all that it gives. Refuses what is damaged or not known. */
export function decodeStream(
  bytes: Uint8Array,
  filters: readonly Filter[],
  resolve: Resolve,
  budget: Budget,
): Uint8Array {
  return filters.reduce((encoded, { name, parameters }) => {
    const value = (key: string, otherwise: number): number => {
      const given = resolve(parameters.get(key));
      return typeof given === 'number' ? given : otherwise;
    };
    const decoded = undone(encoded, name, value('EarlyChange', 1), budget);
    const predictor = PREDICTED.has(name) ? value('Predictor', 1) : 1;
    if (predictor === 1) return decoded;
    if (predictor < 10) throw damaged(fault('predictor-not-understood'));
    budget.spend('unpackedBytes', decoded.length);
    return withoutPredictor(decoded, value('Columns', 1), value('Colors', 1) * value('BitsPerComponent', 8));
  }, bytes);
}
