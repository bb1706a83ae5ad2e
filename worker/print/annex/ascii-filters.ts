import { phrase } from '../../words/words.ts';
import { bytesOfText, textOfBytes } from '../bytes/byte-text.ts';
import { damaged } from '../refusal.ts';
import { hexValue } from './token-value.ts';

/** Undoes `ASCIIHexDecode` (ISO 32000-1, 7.4.2). */
export function fromAsciiHex(bytes: Uint8Array): Uint8Array {
  return bytesOfText(hexValue(textOfBytes(bytes).split('>', 1)[0] ?? ''));
}

const GROUP = 5;

/** Undoes `ASCII85Decode` (ISO 32000-1, 7.4.3). */
export function fromAscii85(bytes: Uint8Array): Uint8Array {
  const out: number[] = [];
  let value = 0;
  let count = 0;
  const put = (kept: number): void => {
    for (let i = 0; i < kept; i++) out.push(Math.floor(value / 256 ** (3 - i)) & 255);
    value = 0;
    count = 0;
  };
  for (const byte of bytes) {
    if (byte === 0x7e) break;
    if (byte <= 0x20) continue;
    if (byte === 0x7a && count === 0) {
      out.push(0, 0, 0, 0);
      continue;
    }
    if (byte < 0x21 || byte > 0x75) throw damaged(phrase`a part coded as text is not to be understood`);
    value = value * 85 + byte - 0x21;
    if (++count === GROUP) put(4);
  }
  if (count > 1) {
    const kept = count - 1;
    for (; count < GROUP; count++) value = value * 85 + 84;
    put(kept);
  }
  return Uint8Array.from(out);
}
