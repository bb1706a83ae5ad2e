import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { damaged } from '../refusal.ts';

// Both read byte by byte, whatever comes of it: what goes in is charged as well as what comes out.

function digitOf(byte: number): number {
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30;
  const letter = byte | 0x20;
  return letter >= 0x61 && letter <= 0x66 ? letter - 0x57 : -1;
}

const GREATER = 0x3e;

/** Undoes `ASCIIHexDecode` (ISO 32000-1, 7.4.2). What is no digit is passed over. */
export function fromAsciiHex(bytes: Uint8Array, budget: Budget): Uint8Array {
  const at = bytes.indexOf(GREATER);
  const end = at < 0 ? bytes.length : at;
  budget.spend('unpackedBytes', end + Math.ceil(end / 2));
  const out = new Uint8Array(Math.ceil(end / 2));
  let digits = 0;
  for (let i = 0; i < end; i++) {
    const digit = digitOf(bytes[i] ?? 0);
    if (digit < 0) continue;
    out[digits >> 1] = (out[digits >> 1] ?? 0) | (digits % 2 === 0 ? digit << 4 : digit);
    digits += 1;
  }
  return out.subarray(0, Math.ceil(digits / 2));
}

const GROUP = 5;
const [TILDE, SPACE, ZEROS, FIRST, LAST] = [0x7e, 0x20, 0x7a, 0x21, 0x75];

// Four bytes for every `z`, and for every five other characters.
function ascii85Bytes(bytes: Uint8Array, end: number): number {
  let zeros = 0;
  for (let i = 0; i < end; i++) if (bytes[i] === ZEROS) zeros += 1;
  return 4 * zeros + 4 * Math.ceil((end - zeros) / GROUP);
}

/** Undoes `ASCII85Decode` (ISO 32000-1, 7.4.3). */
export function fromAscii85(bytes: Uint8Array, budget: Budget): Uint8Array {
  const tilde = bytes.indexOf(TILDE);
  const end = tilde < 0 ? bytes.length : tilde;
  budget.spend('unpackedBytes', end);
  const most = ascii85Bytes(bytes, end);
  budget.spend('unpackedBytes', most);
  const out = new Uint8Array(most);
  let [value, count, length] = [0, 0, 0];
  const put = (kept: number): void => {
    for (let i = 0; i < kept; i++) out[length++] = Math.floor(value / 256 ** (3 - i)) & 255;
    value = 0;
    count = 0;
  };
  for (let i = 0; i < end; i++) {
    const byte = bytes[i] ?? 0;
    if (byte <= SPACE) continue;
    if (byte === ZEROS && count === 0) {
      length += 4;
      continue;
    }
    if (byte < FIRST || byte > LAST) throw damaged(fault('part-coded-text-not-understood'));
    value = value * 85 + byte - FIRST;
    if (++count === GROUP) put(4);
  }
  if (count > 1) {
    const kept = count - 1;
    for (; count < GROUP; count++) value = value * 85 + 84;
    put(kept);
  }
  return out.subarray(0, length);
}
