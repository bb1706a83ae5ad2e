import { textOfBytes } from '../bytes/byte-text.ts';
import type { Token } from './lexer.ts';

/** The text of a token as it stands, one character a byte. */
export function tokenText(bytes: Uint8Array, { start, end }: Token): string {
  return textOfBytes(bytes.subarray(start, end));
}

/** The value of a number; NaN for what only begins like one. */
export function numberValue(text: string): number {
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
}

/** The value of a name, given with its slash (ISO 32000-1, 7.3.5). */
export function nameValue(text: string): string {
  return text
    .slice(1)
    .replace(/#([0-9a-f]{2})/gi, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)));
}

/** The value of a hexadecimal string, given with its brackets (ISO 32000-1, 7.3.4.3). */
export function hexValue(text: string): string {
  const digits = text.replace(/[^0-9a-f]/gi, '');
  let value = '';
  for (let i = 0; i < digits.length; i += 2)
    value += String.fromCharCode(Number.parseInt(digits.slice(i, i + 2).padEnd(2, '0'), 16));
  return value;
}

const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

/** The value of a literal string, given with its brackets (ISO 32000-1, 7.3.4.2). */
export function stringValue(text: string): string {
  const within = text.slice(1, text.endsWith(')') ? -1 : undefined);
  return within.replace(/\\([0-7]{1,3}|\r\n|[\s\S])|\r\n?/g, (match, escaped: string | undefined) => {
    if (escaped === undefined) return '\n';
    if (/^[0-7]/.test(escaped)) return String.fromCharCode(Number.parseInt(escaped, 8) & 255);
    if (/^[\r\n]/.test(escaped)) return '';
    return ESCAPES[escaped] ?? match.slice(1);
  });
}
