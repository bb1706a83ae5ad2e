import { textOfBytes } from '../bytes/byte-text.ts';
import type { Token } from './lexer.ts';

/** The text of a token as it stands, one character a byte. */
export function tokenText(bytes: Uint8Array, { start, end }: Token): string {
  return textOfBytes(bytes.subarray(start, end));
}

// A token may be as long as its file: each of these goes through it once, in steps that do not depend on what went before.

/** The value of a number; NaN for what only begins like one. */
export function numberValue(text: string): number {
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
}

function digitAt(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code >= 0x30 && code <= 0x39) return code - 0x30;
  const letter = code | 0x20;
  return letter >= 0x61 && letter <= 0x66 ? letter - 0x57 : -1;
}

/** The value of a name, given with its slash (ISO 32000-1, 7.3.5). */
export function nameValue(text: string): string {
  if (!text.includes('#')) return text.slice(1);
  const value = new Uint8Array(text.length);
  let length = 0;
  for (let at = 1; at < text.length; at++) {
    const [high, low] = text[at] === '#' ? [digitAt(text, at + 1), digitAt(text, at + 2)] : [-1, -1];
    const isCode = high >= 0 && low >= 0;
    value[length++] = isCode ? high * 16 + low : text.charCodeAt(at);
    if (isCode) at += 2;
  }
  return textOfBytes(value.subarray(0, length));
}

/** The value of a hexadecimal string, given with its brackets (ISO 32000-1, 7.3.4.3). */
export function hexValue(text: string): string {
  const value = new Uint8Array(Math.ceil(text.length / 2));
  let digits = 0;
  for (let at = 0; at < text.length; at++) {
    const digit = digitAt(text, at);
    if (digit < 0) continue;
    // The half that is missing at the end counts as zero.
    if (digits % 2 === 0) value[digits >> 1] = digit * 16;
    else value[digits >> 1] = (value[digits >> 1] ?? 0) + digit;
    digits += 1;
  }
  return textOfBytes(value.subarray(0, Math.ceil(digits / 2)));
}

const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };
const LONGEST_OCTAL = 3;

/** The value of a literal string, given with its brackets (ISO 32000-1, 7.3.4.2). */
export function stringValue(text: string): string {
  const end = text.endsWith(')') ? text.length - 1 : text.length;
  const value = new Uint8Array(text.length);
  let length = 0;
  for (let at = 1; at < end; ) {
    const character = text.charAt(at++);
    if (character === '\r') {
      value[length++] = 10;
      if (text[at] === '\n') at += 1;
    } else if (character !== '\\' || at === end) value[length++] = character.charCodeAt(0);
    else if (isOctal(text, at)) {
      let code = 0;
      for (let digits = 0; digits < LONGEST_OCTAL && at < end && isOctal(text, at); digits++)
        code = code * 8 + Number(text[at++]);
      value[length++] = code;
    } else {
      const escaped = text.charAt(at++);
      // A line that goes on in the next one.
      if (escaped === '\r' && text[at] === '\n') at += 1;
      else if (escaped !== '\r' && escaped !== '\n') value[length++] = (ESCAPES[escaped] ?? escaped).charCodeAt(0);
    }
  }
  return textOfBytes(value.subarray(0, length));
}

function isOctal(text: string, at: number): boolean {
  const character = text[at];
  return character !== undefined && character >= '0' && character <= '7';
}
