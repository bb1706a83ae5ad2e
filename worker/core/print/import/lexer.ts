/** A lexical unit of a PDF file or content stream (ISO 32000-1, 7.2 and 7.3), by where it stands. `word` is an operator or keyword. */
export interface Token {
  kind: 'number' | 'word' | 'name' | 'string' | 'hex' | '[' | ']' | '<<' | '>>' | 'end';
  start: number;
  end: number;
}

const [REGULAR, WHITE, DELIMITER] = [0, 1, 2];
const CLASS = Uint8Array.from({ length: 256 }, (_, byte) => {
  if ([0, 9, 10, 12, 13, 32].includes(byte)) return WHITE;
  return '()<>[]{}/%'.includes(String.fromCharCode(byte)) ? DELIMITER : REGULAR;
});

export function isWhite(byte: number | undefined): boolean {
  return byte === undefined || CLASS[byte] === WHITE;
}

const code = (character: string): number => character.charCodeAt(0);
const [OPEN, CLOSE, BACKSLASH, PERCENT, SLASH] = ['(', ')', '\\', '%', '/'].map(code);
const [LESS, GREATER, LINE_FEED, RETURN] = [code('<'), code('>'), 10, 13];

function skipBlank(bytes: Uint8Array, start: number): number {
  let at = start;
  for (;;) {
    while (at < bytes.length && CLASS[bytes[at] ?? 0] === WHITE) at++;
    if (bytes[at] !== PERCENT) return at;
    while (at < bytes.length && bytes[at] !== LINE_FEED && bytes[at] !== RETURN) at++;
  }
}

// Brackets within a string balance unless a backslash stands before them.
function endOfString(bytes: Uint8Array, start: number): number {
  let depth = 0;
  for (let at = start; at < bytes.length; at++) {
    const byte = bytes[at];
    if (byte === BACKSLASH) at++;
    else if (byte === OPEN) depth++;
    else if (byte === CLOSE && --depth === 0) return at + 1;
  }
  return bytes.length;
}

function endOfRegular(bytes: Uint8Array, start: number): number {
  let at = start;
  while (at < bytes.length && CLASS[bytes[at] ?? 0] === REGULAR) at++;
  return at;
}

const NUMBER_FIRST = /[0-9+\-.]/;

/** The token at or after a place; of kind `end` where there is none. Unfinished strings reach to the end. */
export function tokenAt(bytes: Uint8Array, from: number): Token {
  const start = skipBlank(bytes, from);
  const byte = bytes[start];
  if (byte === undefined) return { kind: 'end', start, end: start };
  if (CLASS[byte] === REGULAR) {
    const kind = NUMBER_FIRST.test(String.fromCharCode(byte)) ? 'number' : 'word';
    return { kind, start, end: endOfRegular(bytes, start) };
  }
  if (byte === SLASH) return { kind: 'name', start, end: endOfRegular(bytes, start + 1) };
  if (byte === OPEN) return { kind: 'string', start, end: endOfString(bytes, start) };
  if (byte === LESS || byte === GREATER) {
    if (bytes[start + 1] === byte) return { kind: byte === LESS ? '<<' : '>>', start, end: start + 2 };
    if (byte === GREATER) return { kind: 'word', start, end: start + 1 };
    const close = bytes.indexOf(GREATER, start);
    return { kind: 'hex', start, end: close < 0 ? bytes.length : close + 1 };
  }
  const character = String.fromCharCode(byte);
  return { kind: character === '[' || character === ']' ? character : 'word', start, end: start + 1 };
}
