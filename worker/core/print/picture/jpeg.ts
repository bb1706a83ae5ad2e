import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import { bytesOfText, joined, textOfBytes } from '../bytes/byte-text.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { exifOrientation, orientationAsExif } from './exif-orientation.ts';
import { type Orientation, type Picture, pictureOf } from './picture.ts';

/** A marker segment with its marker and length (ITU-T T.81, B.1.1), and for a scan the coded data after it. */
interface Segment {
  marker: number;
  bytes: Uint8Array;
  body: Uint8Array;
}

const [SOI, EOI, SOS, DHT, DQT, DRI] = [0xd8, 0xd9, 0xda, 0xc4, 0xdb, 0xdd];
const [APP0, APP1, APP14] = [0xe0, 0xe1, 0xee];
const START = Uint8Array.of(0xff, SOI);
const END = Uint8Array.of(0xff, EOI);
const EXIF = 'Exif\0\0';

// Frames that PDF readers decode: baseline, extended sequential and progressive, Huffman coded (ISO 32000-1, 7.4.8).
const FRAMES = new Set([0xc0, 0xc1, 0xc2]);
const OTHER_FRAMES = new Set([0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf]);

/** End of a JPEG: an end marker; or the end of the bytes, because some writers of PDF leave it out. */
type Ending = 'marked' | 'open';

// Coded data continue to the next marker; a stuffed zero and the restart markers belong to them.
function endOfScan(bytes: Uint8Array, start: number, ending: Ending): number {
  for (let at = bytes.indexOf(0xff, start); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1];
    if (next === undefined) break;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  if (ending === 'open') return bytes.length;
  throw damaged(fault('picture-ends-early'));
}

function segmentsOf(bytes: Uint8Array, ending: Ending = 'marked'): Segment[] {
  const segments: Segment[] = [];
  for (let at = START.length; ; ) {
    if (ending === 'open' && at === bytes.length && segments.length > 0) return segments;
    if (bytes[at] !== 0xff) throw damaged(fault('picture-no-marker-where-one-must'));
    while (bytes[at + 1] === 0xff) at++;
    const marker = bytes[at + 1];
    if (marker === EOI) return segments;
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const bodyEnd = at + 2 + length;
    if (marker === undefined || length < 2 || bodyEnd > bytes.length) throw damaged(fault('picture-ends-early'));
    const end = marker === SOS ? endOfScan(bytes, bodyEnd, ending) : bodyEnd;
    segments.push({ marker, bytes: bytes.subarray(at, end), body: bytes.subarray(at + 4, bodyEnd) });
    at = end;
  }
}

const startsWith = (bytes: Uint8Array, text: string): boolean => textOfBytes(bytes.subarray(0, text.length)) === text;

const JFIF_BYTES = 14;

// Segments that a decoder needs, and no more: others contain data of a camera or a program, or anything else.
const DECODED = new Set([...FRAMES, SOS, DHT, DQT, DRI]);

// Decoders need JFIF's and Adobe's segments for the colours. A thumbnail may show removed parts of the picture.
function withoutMetadata(segments: readonly Segment[]): Uint8Array[] {
  return segments.flatMap(({ marker, bytes, body }) => {
    if (marker === APP14 && startsWith(body, 'Adobe')) return [bytes];
    if (marker === APP0 && startsWith(body, 'JFIF\0') && body.length >= JFIF_BYTES) {
      return [Uint8Array.of(0xff, APP0, 0, JFIF_BYTES + 2), body.subarray(0, JFIF_BYTES - 2), Uint8Array.of(0, 0)];
    }
    return DECODED.has(marker) ? [bytes] : [];
  });
}

function orientationOf(segments: readonly Segment[]): Orientation {
  const exif = segments.find(({ marker, body }) => marker === APP1 && startsWith(body, EXIF));
  return exif ? exifOrientation(exif.body.subarray(EXIF.length)) : 1;
}

interface Frame {
  columns: number;
  rows: number;
  components: number;
}

// Every scan covers the whole picture: a small file with thousands of them would keep its readers busy without end.
function refuseEndless(segments: readonly Segment[]): void {
  if (segments.filter(({ marker }) => marker === SOS).length > LIMITS.imageScans)
    throw new RefusedError('too-large', fault('picture-coded-more-than-passes', { imageScans: LIMITS.imageScans }));
}

function frameOf(segments: readonly Segment[]): Frame {
  refuseEndless(segments);
  if (segments.filter(({ marker }) => FRAMES.has(marker)).length > 1)
    throw damaged(fault('picture-not-say-what-holds'));
  if (segments.some(({ marker }) => OTHER_FRAMES.has(marker)))
    throw new RefusedError('unknown-type', fault('jpeg-coded-way-pdf-not-know'));
  const at = segments.findIndex(({ marker }) => FRAMES.has(marker));
  const frame = segments[at]?.body ?? new Uint8Array();
  const [precision = 0, rowsHigh = 0, rowsLow = 0, columnsHigh = 0, columnsLow = 0, components = 0] = frame;
  const [rows, columns] = [(rowsHigh << 8) | rowsLow, (columnsHigh << 8) | columnsLow];
  const firstScan = segments.findIndex(({ marker }) => marker === SOS);
  if (at < 0 || firstScan < at || frame.length < 6 + 3 * components || rows === 0 || columns === 0)
    throw damaged(fault('picture-not-say-what-holds'));
  if (precision !== 8) throw new RefusedError('colour', fault('picture-bits-sample8-taken', { precision }));
  return { columns, rows, components };
}

export function isJpeg(bytes: Uint8Array): boolean {
  return bytes[0] === 0xff && bytes[1] === SOI && bytes[2] === 0xff;
}

/** Reads the frame of a JPEG (ITU-T T.81) and its orientation; the coded samples stay unchanged. */
export function readJpeg(bytes: Uint8Array): Picture {
  const segments = segmentsOf(bytes);
  const { columns, rows, components } = frameOf(segments);
  if (components !== 1 && components !== 3)
    throw new RefusedError('colour', fault('picture-colour-components-grey-rgb-taken', { components }));
  return pictureOf({
    kind: 'jpeg',
    orientation: orientationOf(segments),
    columns,
    rows,
    unpackedPixels: 0,
    image: () => ({
      colourSpace: components === 1 ? '/DeviceGray' : '/DeviceRGB',
      bitsPerComponent: 8,
      samples: { encoded: joined([START, ...withoutMetadata(segments), END]), filter: '/DCTDecode', parameters: '' },
    }),
  });
}

/** Returns a JPEG from a PDF, of any colours, without metadata and without other data that PDF does not need. */
export function cleanEmbeddedJpeg(bytes: Uint8Array): Frame & { bytes: Uint8Array } {
  if (!isJpeg(bytes)) throw damaged(fault('picture-no-jpeg-though-says-so'));
  const segments = segmentsOf(bytes, 'open');
  return { ...frameOf(segments), bytes: joined([START, ...withoutMetadata(segments), END]) };
}

/** Returns the JPEG without metadata, and without data after its end; its orientation stays, as the only Exif data. */
export function cleanJpeg(bytes: Uint8Array): Uint8Array {
  const segments = segmentsOf(bytes);
  const orientation = orientationOf(segments);
  const kept = withoutMetadata(segments);
  if (orientation === 1) return joined([START, ...kept, END]);
  const exif = joined([bytesOfText(EXIF), orientationAsExif(orientation)]);
  const segment = joined([Uint8Array.of(0xff, APP1, 0, exif.length + 2), exif]);
  return joined([START, segment, ...kept, END]);
}
