/** An operand of a content stream. Strings are kept as their bytes, a character a byte. */
export type Operand = number | boolean | null | { name: string } | { bytes: string } | Operand[] | Map<string, Operand>;

/** Reads the tokens of a content stream one after another. */
export interface OperandReader {
  isAtEnd: () => boolean;
  /** The keyword that stands here; null where an operand does. */
  keyword: () => string | null;
  operand: () => Operand;
}

const BLANK = /(?:[\0\t\n\f\r ]|%[^\r\n]*)*/y;
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?=[\0\t\n\f\r ()<>[\]{}/%]|$)/y;
const NAME = /\/([^\0\t\n\f\r ()<>[\]{}/%]*)/y;
const HEXADECIMAL = /<([0-9A-Fa-f\s]*)>/y;
const KEYWORD = /[^\0\t\n\f\r ()<>[\]{}/%]+/y;
const OCTAL = /[0-7]{1,3}/y;
const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f', '\n': '' };
const CONSTANTS: Readonly<Record<string, boolean | null>> = { true: true, false: false, null: null };

/** A reader at the beginning of a content stream (ISO 32000-1, 7.2, 7.3). */
export function operandReader(content: string): OperandReader {
  let at = 0;
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(content);
    if (found) at = pattern.lastIndex;
    return found;
  };

  const escaped = (): string => {
    const code = match(OCTAL);
    if (code) return String.fromCharCode(Number.parseInt(code[0], 8) & 0xff);
    const character = content[at++] ?? '';
    return ESCAPES[character] ?? character;
  };

  const literal = (): Operand => {
    let bytes = '';
    for (let depth = 1; at < content.length; ) {
      const character = content[at++] ?? '';
      if (character === '(') depth++;
      if (character === ')' && --depth === 0) break;
      bytes += character === '\\' ? escaped() : character;
    }
    return { bytes };
  };

  const until = (end: string): Operand[] => {
    const operands: Operand[] = [];
    for (match(BLANK); !content.startsWith(end, at); match(BLANK)) {
      if (at >= content.length) throw new Error(`Cannot read content: ${end} must follow`);
      operands.push(operand());
    }
    at += end.length;
    return operands;
  };

  const dictionary = (): Operand => {
    const pairs = until('>>');
    const entries = new Map<string, Operand>();
    for (let i = 0; i + 1 < pairs.length; i += 2)
      entries.set((pairs[i] as { name: string }).name, pairs[i + 1] ?? null);
    return entries;
  };

  const operand = (): Operand => {
    const number = match(NUMBER);
    if (number) return Number(number[0]);
    const name = match(NAME);
    if (name) return { name: name[1] ?? '' };
    const hexadecimal = match(HEXADECIMAL);
    if (hexadecimal) return { bytes: Buffer.from((hexadecimal[1] ?? '').replace(/\s/g, ''), 'hex').toString('latin1') };
    const constant = CONSTANTS[match(KEYWORD)?.[0] ?? ''];
    if (constant !== undefined) return constant;
    const opening = content.slice(at, at + 2);
    at += opening === '<<' ? 2 : 1;
    if (opening === '<<') return dictionary();
    if (opening.startsWith('(')) return literal();
    if (opening.startsWith('[')) return until(']');
    throw new Error(`Cannot read content: an operand must stand here: current value is "${opening}"`);
  };

  const keyword = (): string | null => {
    const before = at;
    const word = match(NUMBER) ? null : match(KEYWORD);
    if (word && !(word[0] in CONSTANTS)) return word[0];
    at = before;
    return null;
  };

  const isAtEnd = (): boolean => {
    match(BLANK);
    return at >= content.length;
  };
  return { isAtEnd, keyword, operand };
}
