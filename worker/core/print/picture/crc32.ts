// The polynomial of ISO 3309, lowest bit first.
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? POLYNOMIAL ^ (value >>> 1) : value >>> 1;
  return value;
});

/** Returns the cyclic redundancy code of a PNG chunk (PNG, third edition, annex D). */
export function crc32(bytes: Uint8Array): number {
  let code = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) code = (TABLE[(code ^ (bytes[i] ?? 0)) & 255] ?? 0) ^ (code >>> 8);
  return (code ^ 0xffffffff) >>> 0;
}
