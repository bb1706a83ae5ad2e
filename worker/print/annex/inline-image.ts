import { isWhite, tokenAt } from './lexer.ts';
import { tokenText } from './token-value.ts';

/** Where an inline image ends, after its `EI`, and what it uses. */
export interface InlineImage {
  end: number;
  usesCmyk: boolean;
  usesLzw: boolean;
}

const [E, I] = [0x45, 0x49];

// Samples may hold the letters by chance; content goes on in printable characters, samples hardly do for so long.
const LOOK_AHEAD_BYTES = 12;

function isTextAfter(bytes: Uint8Array, from: number): boolean {
  return bytes.subarray(from, from + LOOK_AHEAD_BYTES).every((byte) => (byte >= 0x20 && byte < 0x7f) || isWhite(byte));
}

function isEnd(bytes: Uint8Array, at: number): boolean {
  return (
    bytes[at] === E &&
    bytes[at + 1] === I &&
    isWhite(bytes[at - 1]) &&
    isWhite(bytes[at + 2]) &&
    isTextAfter(bytes, at + 2)
  );
}

/** Goes through an inline image from after its `BI` (ISO 32000-1, 8.9.7). One without an end reaches to the end of the content. */
export function endOfInlineImage(bytes: Uint8Array, from: number): InlineImage {
  let [usesCmyk, usesLzw, at] = [false, false, from];
  for (;;) {
    const token = tokenAt(bytes, at);
    at = token.end;
    if (token.kind === 'end') return { end: at, usesCmyk, usesLzw };
    const text = tokenText(bytes, token);
    if (text === 'ID') break;
    usesCmyk ||= text === '/CMYK' || text === '/DeviceCMYK';
    usesLzw ||= text === '/LZW' || text === '/LZWDecode';
  }
  // One white space character stands between `ID` and the samples.
  for (let end = bytes.indexOf(E, at + 1); end >= 0; end = bytes.indexOf(E, end + 1)) {
    if (isEnd(bytes, end)) return { end: end + 2, usesCmyk, usesLzw };
  }
  return { end: bytes.length, usesCmyk, usesLzw };
}
