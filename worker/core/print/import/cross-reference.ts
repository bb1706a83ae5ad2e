import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { textOfBytes } from '../bytes/byte-text.ts';
import { dictionaryOf, isArray, type PdfDictionary, type PdfObject } from '../pdf-object.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { tokenAt } from './lexer.ts';
import type { Parser } from './parse-object.ts';
import { tokenText } from './token-value.ts';

/** Where an object stands: at a place of the file, in an object stream, or nowhere because it was deleted. */
export type Entry = { kind: 'at'; offset: number } | { kind: 'in'; stream: number } | { kind: 'deleted' };

/** Which objects there are, and where; the newest revision of each (ISO 32000-1, 7.5.4 to 7.5.8). */
export interface CrossReference {
  entries: ReadonlyMap<number, Entry>;
  trailer: PdfDictionary;
}

/** Reads the stream at a place without help of any cross-reference: its dictionary and decoded bytes. */
export type StreamAt = (offset: number) => { dictionary: PdfDictionary; decoded: Uint8Array };

interface Section {
  entries: Map<number, Entry>;
  trailer: PdfDictionary;
}

const TAIL_BYTES = 2048;

function whole(object: PdfObject | undefined, otherwise?: number): number {
  const value = object === undefined ? otherwise : object;
  if (typeof value !== 'number' || !Number.isInteger(value) || value < 0)
    throw damaged(fault('table-objects-not-understood'));
  return value;
}

function startOf(bytes: Uint8Array, parse: Parser): number {
  const tailStart = Math.max(0, bytes.length - TAIL_BYTES);
  const tail = textOfBytes(bytes.subarray(tailStart));
  const at = tail.lastIndexOf('startxref');
  if (at < 0) throw damaged(fault('ends-early'));
  return whole(parse(bytes, tailStart + at + 'startxref'.length).object);
}

function readTable(bytes: Uint8Array, start: number, parse: Parser, budget: Budget): Section {
  const entries = new Map<number, Entry>();
  let at = start;
  const next = (): string => {
    const token = tokenAt(bytes, at);
    at = token.end;
    return tokenText(bytes, token);
  };
  const digits = (text: string): number => whole(/^\d+$/.test(text) ? Number(text) : Number.NaN);
  for (let text = next(); text !== 'trailer'; text = next()) {
    const first = digits(text);
    const count = digits(next());
    budget.spend('objects', 1);
    for (let i = 0; i < count; i++) {
      budget.spend('objects', 1);
      const offset = digits(next());
      digits(next());
      const use = next();
      if (use !== 'n' && use !== 'f') throw damaged(fault('table-objects-not-understood'));
      entries.set(first + i, use === 'n' ? { kind: 'at', offset } : { kind: 'deleted' });
    }
  }
  return { entries, trailer: dictionaryOf(parse(bytes, at).object) };
}

function readStream({ dictionary, decoded }: ReturnType<StreamAt>, budget: Budget): Section {
  const entries = new Map<number, Entry>();
  const numbers = (object: PdfObject | undefined): number[] =>
    isArray(object) ? object.map((each) => whole(each)) : [];
  const [kindBytes = 0, secondBytes = 0, thirdBytes = 0] = numbers(dictionary.get('W'));
  const given = numbers(dictionary.get('Index'));
  const index = given.length > 0 ? given : [0, whole(dictionary.get('Size'))];
  const size = kindBytes + secondBytes + thirdBytes;
  if (size === 0 || size > 20) throw damaged(fault('table-objects-not-understood'));
  let at = 0;
  const field = (length: number): number => {
    let value = 0;
    for (let i = 0; i < length; i++) value = value * 256 + (decoded[at++] ?? 0);
    return value;
  };
  for (let pair = 0; pair + 1 < index.length; pair += 2) {
    const [first = 0, count = 0] = index.slice(pair, pair + 2);
    if (at + count * size > decoded.length) throw damaged(fault('table-objects-ends-early'));
    budget.spend('objects', count);
    for (let i = 0; i < count; i++) {
      const kind = kindBytes === 0 ? 1 : field(kindBytes);
      const second = field(secondBytes);
      field(thirdBytes);
      if (kind === 1) entries.set(first + i, { kind: 'at', offset: second });
      else entries.set(first + i, kind === 2 ? { kind: 'in', stream: second } : { kind: 'deleted' });
    }
  }
  return { entries, trailer: dictionary };
}

/** Reads all revisions, newest first. Refuses encrypted files, and tables that lead nowhere: a file is not guessed together. */
export function readCrossReference(
  bytes: Uint8Array,
  parse: Parser,
  budget: Budget,
  streamAt: StreamAt,
): CrossReference {
  const entries = new Map<number, Entry>();
  const seen = new Set<number>();
  let newest: PdfDictionary | undefined;
  const queue: number[] = [startOf(bytes, parse)];
  const take = (section: Section): void => {
    if (section.trailer.has('Encrypt')) throw new RefusedError('encrypted', fault('encrypted'));
    for (const [number, entry] of section.entries) if (!entries.has(number)) entries.set(number, entry);
  };
  for (let start = queue.shift(); start !== undefined; start = queue.shift()) {
    if (seen.has(start)) throw damaged(fault('table-objects-leads-back-itself'));
    seen.add(start);
    const keyword = tokenAt(bytes, start);
    const isTable = tokenText(bytes, keyword) === 'xref';
    const section = isTable ? readTable(bytes, keyword.end, parse, budget) : readStream(streamAt(start), budget);
    // Objects that a table hides from old readers stand in a stream beside it, which so comes first (7.5.8.4).
    if (isTable && section.trailer.has('XRefStm'))
      take(readStream(streamAt(whole(section.trailer.get('XRefStm'))), budget));
    take(section);
    newest ??= section.trailer;
    if (section.trailer.has('Prev')) queue.push(whole(section.trailer.get('Prev')));
  }
  return { entries, trailer: newest ?? new Map() };
}
