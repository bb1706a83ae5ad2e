import type { Orientation } from './picture.ts';

const ORIENTATION = 274;
const SHORT = 3;
const ENTRY_BYTES = 12;

/**
 * Reads the orientation from Exif data, which are a TIFF file: its first directory, tag 274 (TIFF 6.0, section 2 and
 * 8). 1 if it is missing or the data are not readable: the picture is complete without them.
 */
export function exifOrientation(tiff: Uint8Array): Orientation {
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  if (tiff.length < 8) return 1;
  const order = view.getUint16(0);
  const little = order === 0x4949;
  if ((!little && order !== 0x4d4d) || view.getUint16(2, little) !== 42) return 1;
  const directory = view.getUint32(4, little);
  if (directory + 2 > tiff.length) return 1;
  const entries = view.getUint16(directory, little);
  for (let i = 0; i < entries; i++) {
    const at = directory + 2 + i * ENTRY_BYTES;
    if (at + ENTRY_BYTES > tiff.length) return 1;
    if (view.getUint16(at, little) !== ORIENTATION || view.getUint16(at + 2, little) !== SHORT) continue;
    const value = view.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? (value as Orientation) : 1;
  }
  return 1;
}

/** Returns Exif data with only an orientation, big-endian. */
export function orientationAsExif(orientation: Orientation): Uint8Array {
  return Uint8Array.from([
    ...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8],
    ...[0, 1],
    ...[ORIENTATION >> 8, ORIENTATION & 255, 0, SHORT, 0, 0, 0, 1, 0, orientation, 0, 0],
    ...[0, 0, 0, 0],
  ]);
}
