/**
 * Returns an sRGB colour profile built here, ICC.1:2004-10 (version 4.2): primaries and white point of IEC 61966-2-1
 * adapted to D50 by the Bradford matrix, and its tone curve as a parametric curve of type 3.
 */
export function colourProfile(): Uint8Array {
  const tags = profileTags();
  const headBytes = 128 + 4 + 12 * tags.length;
  // Red, green and blue share one curve: equal contents are stored once.
  const offsets = new Map<Uint8Array, number>();
  let size = headBytes;
  for (const [, data] of tags) {
    if (offsets.has(data)) continue;
    offsets.set(data, size);
    size += data.length + ((4 - (data.length % 4)) % 4);
  }
  const bytes = new Uint8Array(size);
  const view = new DataView(bytes.buffer);
  writeHeader(bytes, view);
  view.setUint32(128, tags.length);
  tags.forEach(([signature, data], i) => {
    const at = 132 + 12 * i;
    const offset = offsets.get(data) ?? 0;
    bytes.set(ascii(signature), at);
    view.setUint32(at + 4, offset);
    view.setUint32(at + 8, data.length);
    bytes.set(data, offset);
  });
  return bytes;
}

const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);

function writeHeader(bytes: Uint8Array, view: DataView): void {
  view.setUint32(0, bytes.length);
  view.setUint32(8, 0x04200000);
  bytes.set(ascii('mntrRGB XYZ '), 12);
  // Creation date of the profile: fixed, as the bytes of a pack depend only on the record.
  for (const [i, part] of [2026, 1, 1, 0, 0, 0].entries()) view.setUint16(24 + 2 * i, part);
  bytes.set(ascii('acsp'), 36);
  for (const [i, value] of [0.9642, 1, 0.8249].entries()) view.setInt32(68 + 4 * i, fixed(value));
}

// s15Fixed16Number: sixteen binary places.
const fixed = (value: number): number => Math.round(value * 65536);

function fixedArray(type: string, values: readonly number[], before: readonly number[] = []): Uint8Array {
  const bytes = new Uint8Array(8 + before.length + 4 * values.length);
  const view = new DataView(bytes.buffer);
  bytes.set(ascii(type));
  bytes.set(before, 8);
  for (const [i, value] of values.entries()) view.setInt32(8 + before.length + 4 * i, fixed(value));
  return bytes;
}

function localisedText(text: string): Uint8Array {
  const bytes = new Uint8Array(28 + 2 * text.length);
  const view = new DataView(bytes.buffer);
  bytes.set(ascii('mluc'));
  view.setUint32(8, 1);
  view.setUint32(12, 12);
  bytes.set(ascii('enUS'), 16);
  view.setUint32(20, 2 * text.length);
  view.setUint32(24, 28);
  for (let i = 0; i < text.length; i++) view.setUint16(28 + 2 * i, text.charCodeAt(i));
  return bytes;
}

function profileTags(): [signature: string, data: Uint8Array][] {
  // Y = (aX + b)^g for X >= d, else cX, with g, a, b, c, d of IEC 61966-2-1.
  const curve = fixedArray('para', [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045], [0, 3, 0, 0]);
  return [
    ['desc', localisedText('sRGB')],
    ['cprt', localisedText('No copyright')],
    ['wtpt', fixedArray('XYZ ', [0.9642, 1, 0.8249])],
    [
      'chad',
      fixedArray(
        'sf32',
        [1.0478112, 0.0228866, -0.050127, 0.0295424, 0.9904844, -0.0170491, -0.0092345, 0.0150436, 0.7521316],
      ),
    ],
    ['rXYZ', fixedArray('XYZ ', [0.4360747, 0.2225045, 0.0139322])],
    ['gXYZ', fixedArray('XYZ ', [0.3850649, 0.7168786, 0.0971045])],
    ['bXYZ', fixedArray('XYZ ', [0.1430804, 0.0606169, 0.7141733])],
    ['rTRC', curve],
    ['gTRC', curve],
    ['bTRC', curve],
  ];
}
