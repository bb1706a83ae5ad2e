import { FACE_CHARACTERS, type FaceName, kerning } from '../fonts/face.ts';

/** Formats a length for a content stream: hundredths of a point, finer than any printer. Throws for NaN and infinity. */
export function number(value: number): string {
  if (!Number.isFinite(value))
    throw new Error(`Cannot draw: a length must be a finite number: current value is ${value}`);
  return String(Math.round(value * 100) / 100);
}

/** Formats a ratio, such as an element of a matrix, to five places. */
export function ratio(value: number): string {
  return String(Math.round(value * 100_000) / 100_000);
}

// Parentheses and the backslash are escaped, and the carriage return, which a reader would interpret as a line feed
// (ISO 32000-1, 7.3.4.2).
function escaped(byte: number): string {
  const character = String.fromCharCode(byte);
  if (byte === 0x0d) return '\\r';
  return '()\\'.includes(character) ? `\\${character}` : character;
}

// Within the range of the faces: all text has passed `printableText`.
const GLYPH_CODES = Array.from(
  { length: Math.max(...FACE_CHARACTERS) + 1 },
  (_, code) => escaped(code >> 8) + escaped(code & 0xff),
);

/**
 * Returns the operator that shows a text, kerned. Strings contain two-byte glyph codes, which are code units: half as
 * long as hexadecimal, and so quicker to deflate.
 */
export function showOperator(text: string, face: FaceName): string {
  let codes = '(';
  let kerned = false;
  let left = -1;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    const kern = left < 0 ? 0 : kerning(face, left, code);
    if (kern !== 0) {
      // The operand is subtracted from the advance (ISO 32000-1, 9.4.3).
      codes += `)${-kern}(`;
      kerned = true;
    }
    codes += GLYPH_CODES[code];
    left = code;
  }
  return kerned ? `[${codes})]TJ` : `${codes})Tj`;
}

/** Returns a text string outside content streams: UTF-16 with byte order mark (ISO 32000-1, 7.9.2.2), in hexadecimal. */
export function textString(text: string): string {
  let hex = '<feff';
  for (let i = 0; i < text.length; i++) hex += text.charCodeAt(i).toString(16).padStart(4, '0');
  return `${hex}>`;
}
