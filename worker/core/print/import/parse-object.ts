import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { nameObject, type PdfObject } from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import { type Token, tokenAt } from './lexer.ts';
import { hexValue, nameValue, numberValue, stringValue, tokenText } from './token-value.ts';

/** An object and the place after it. */
export interface Parsed {
  object: PdfObject;
  end: number;
}

/** Parses the object at or after a place, and tells which token follows it. */
export type Parser = (bytes: Uint8Array, from: number) => Parsed & { next: Token };

type Spend = (cost: number) => void;

// A value costs 1, a dictionary as much memory as several values, and every 16 bytes that are gone through as much time as one.
const DICTIONARY_COST = 4;
const BYTES_PER_COST = 16;

// Real files nest a dozen levels; a deeper one is made to exhaust its readers.
const DEEPEST = 64;

const KEYWORDS: Readonly<Record<string, PdfObject>> = { true: true, false: false, null: null };

// A number may be the first of the three tokens of a reference.
function numberOrReference(bytes: Uint8Array, first: Token): Parsed {
  const value = numberValue(tokenText(bytes, first));
  if (Number.isNaN(value)) throw damaged(fault('number-none'));
  if (Number.isInteger(value) && value >= 0) {
    const second = tokenAt(bytes, first.end);
    if (second.kind === 'number' && /^\d+$/.test(tokenText(bytes, second))) {
      const third = tokenAt(bytes, second.end);
      if (third.kind === 'word' && tokenText(bytes, third) === 'R')
        return { object: { kind: 'reference', number: value }, end: third.end };
    }
  }
  return { object: value, end: first.end };
}

function parseArray(bytes: Uint8Array, start: number, depth: number, spend: Spend): Parsed {
  const items: PdfObject[] = [];
  for (let at = start; ; ) {
    const token = tokenAt(bytes, at);
    if (token.kind === ']') return { object: items, end: token.end };
    const { object, end } = parseToken(bytes, token, depth, spend);
    items.push(object);
    at = end;
  }
}

function parseDictionary(bytes: Uint8Array, start: number, depth: number, spend: Spend): Parsed {
  const entries = new Map<string, PdfObject>();
  for (let at = start; ; ) {
    const key = tokenAt(bytes, at);
    if (key.kind === '>>') return { object: entries, end: key.end };
    if (key.kind !== 'name') throw damaged(fault('dictionary-entry-without-name'));
    const { object, end } = parseToken(bytes, tokenAt(bytes, key.end), depth, spend);
    if (object !== null) entries.set(nameValue(tokenText(bytes, key)), object);
    at = end;
  }
}

function parseToken(bytes: Uint8Array, token: Token, depth: number, spend: Spend): Parsed {
  if (depth > DEEPEST) throw damaged(fault('objects-nested-too-deeply'));
  spend(token.kind === '<<' ? DICTIONARY_COST : 1);
  const { end } = token;
  switch (token.kind) {
    case 'number':
      return numberOrReference(bytes, token);
    case 'name':
      return { object: nameObject(nameValue(tokenText(bytes, token))), end };
    case 'string':
      return { object: { kind: 'string', text: stringValue(tokenText(bytes, token)) }, end };
    case 'hex':
      return { object: { kind: 'string', text: hexValue(tokenText(bytes, token)) }, end };
    case '[':
      return parseArray(bytes, end, depth + 1, spend);
    case '<<':
      return parseDictionary(bytes, end, depth + 1, spend);
    default: {
      const object = KEYWORDS[token.kind === 'word' ? tokenText(bytes, token) : ''];
      if (object === undefined) throw damaged(fault('object-not-understood'));
      return { object, end };
    }
  }
}

/**
 * A parser for one file. It parses the object at or after a place, a stream as its dictionary alone, and refuses what is no object.
 *
 * Objects of a sound file do not overlap, so their lengths add up to no more than the file's. All that is parsed is charged, so that a file
 * whose objects do, or that is nothing but tiny ones, takes neither time nor memory without end.
 */
export function createParser(budget: Budget): Parser {
  const spend: Spend = (cost) => budget.spend('objects', cost);
  return (bytes, from) => {
    const parsed = parseToken(bytes, tokenAt(bytes, from), 0, spend);
    const next = tokenAt(bytes, parsed.end);
    spend(Math.ceil((next.end - from) / BYTES_PER_COST));
    return { ...parsed, next };
  };
}
