import type { Budget } from '../bytes/budget.ts';
import { tokenAt } from './lexer.ts';
import { spendUnit } from './lexical-cost.ts';
import { hexValue, tokenText } from './token-value.ts';

/** Codes of so many bytes, each byte between two bounds. */
export interface CodeSpace {
  low: string;
  high: string;
}

/** What a CMap says (ISO 32000-1, 9.7.5 and 9.10.3): how strings are cut into codes, and which text codes stand for. */
export interface CodeMap {
  spaces: readonly CodeSpace[];
  /** The text of a code; undefined where it gives none. */
  textOf: (code: number) => string | undefined;
}

interface Range {
  low: number;
  high: number;
  /** The text of the first code, to be counted on; or that of each. */
  text: string | readonly string[];
}

/** A code as a number; the longest have four bytes. */
export function codeOf(bytes: string): number {
  let code = 0;
  for (let i = 0; i < bytes.length && i < 4; i++) code = code * 256 + bytes.charCodeAt(i);
  return code;
}

// What the text of a code has at the most (ISO 32000-1, 9.10.3; from memory).
const LONGEST_TEXT_BYTES = 512;

// A string that is kept takes as much memory as several units of content.
const HELD = 4;

// Text stands in it as UTF-16, the first byte first.
function textOfUnits(bytes: string): string {
  if (bytes.length > LONGEST_TEXT_BYTES) return '';
  let text = '';
  for (let i = 0; i + 1 < bytes.length; i += 2)
    text += String.fromCharCode((bytes.charCodeAt(i) << 8) | bytes.charCodeAt(i + 1));
  return text;
}

function countedOn(text: string, steps: number): string {
  if (text === '') return text;
  return text.slice(0, -1) + String.fromCharCode((text.charCodeAt(text.length - 1) + steps) & 0xffff);
}

// The range that begins nearest before a code. Those of sound maps do not overlap.
function rangeOf(ranges: readonly Range[], code: number): Range | undefined {
  let [from, to] = [0, ranges.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((ranges[middle]?.low ?? 0) <= code) from = middle + 1;
    else to = middle;
  }
  const range = ranges[from - 1];
  return range && code <= range.high ? range : undefined;
}

/** An operand of a CMap: a string by its bytes, a list of them, or null for what is neither. */
type Operand = string | readonly string[] | null;

const isText = (operand: Operand | undefined): operand is string => typeof operand === 'string';

/** What the blocks of a CMap have said so far. */
class Said implements CodeMap {
  readonly spaces: CodeSpace[] = [];
  readonly #texts = new Map<number, string>();
  readonly #ranges: Range[] = [];

  /** Takes a block in by the word that ends it; any other word says nothing. */
  take(word: string, operands: readonly Operand[]): void {
    if (word === 'endcodespacerange') this.#takeSpaces(operands);
    else if (word === 'endbfchar') this.#takeCharacters(operands);
    else if (word === 'endbfrange') this.#takeRanges(operands);
  }

  #takeSpaces(operands: readonly Operand[]): void {
    for (let i = 0; i + 1 < operands.length; i += 2) {
      const [low, high] = [operands[i], operands[i + 1]];
      if (isText(low) && isText(high)) this.spaces.push({ low, high });
    }
  }

  #takeCharacters(operands: readonly Operand[]): void {
    for (let i = 0; i + 1 < operands.length; i += 2) {
      const [code, text] = [operands[i], operands[i + 1]];
      if (isText(code) && isText(text)) this.#texts.set(codeOf(code), textOfUnits(text));
    }
  }

  #takeRanges(operands: readonly Operand[]): void {
    for (let i = 0; i + 2 < operands.length; i += 3) {
      const [low, high, text] = [operands[i], operands[i + 1], operands[i + 2]];
      if (!isText(low) || !isText(high) || !text) continue;
      const given = isText(text) ? textOfUnits(text) : text.map(textOfUnits);
      this.#ranges.push({ low: codeOf(low), high: codeOf(high), text: given });
    }
  }

  sort(): void {
    this.#ranges.sort((one, other) => one.low - other.low);
  }

  textOf = (code: number): string | undefined => {
    const single = this.#texts.get(code);
    if (single !== undefined) return single;
    const range = rangeOf(this.#ranges, code);
    if (!range) return undefined;
    const { low, text } = range;
    return typeof text === 'string' ? countedOn(text, code - low) : text[code - low];
  };
}

/** Reads a CMap. What in it is not to be understood says nothing. */
export function readCodeMap(bytes: Uint8Array, budget: Budget): CodeMap {
  const said = new Said();
  let operands: Operand[] = [];
  let list: string[] | null = null;
  for (let at = 0; ; ) {
    const token = tokenAt(bytes, at);
    spendUnit(budget, at, token.end, token.kind === 'end' || token.kind === 'word' ? 1 : HELD);
    if (token.kind === 'end') break;
    at = token.end;
    const string = token.kind === 'hex' ? hexValue(tokenText(bytes, token)) : null;
    if (token.kind === '[') list = [];
    else if (token.kind === ']') {
      operands.push(list);
      list = null;
    } else if (token.kind === 'word') {
      said.take(tokenText(bytes, token), operands);
      operands = [];
    } else if (list) list.push(string ?? '');
    else operands.push(string);
  }
  said.sort();
  return said;
}
