import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { cleanImage, inspectAttachment, type PrintJob, print } from '../../../../worker/core/print/index.ts';
import { chunk, pngOf } from '../../../../worker/core/print/picture/png-chunks.ts';
import { scannedOver, withSegment } from '../import/hostile-files.ts';
import { attachment, latin1 } from '../import/pdf-of.ts';
import { readFile } from '../import/read-file.ts';
import { nodesOf, structureOf } from '../read-back.ts';
import { jobOf } from '../sample-job.ts';

const figure = (source: string, more = ''): string =>
  `<figure><img src="${source}" alt="What ${source} shows"${more}><figcaption>Taken</figcaption></figure>`;

const jobWith = (images: Record<string, Uint8Array>, html?: string): PrintJob =>
  jobOf(
    html ??
      Object.keys(images)
        .map((source) => figure(source))
        .join(''),
    { images },
  );

const LOOM = attachment('loom.jpg');
const SIDE = attachment('loom-on-its-side.jpg');
const ALPHA = attachment('connector-with-alpha.png');

// What the camera wrote: its maker, its clock, and a position.
const PRIVATE = /Exif|Example Camera|2026:11:03|hangar|GPS/;

// The matrices before each picture, in order.
async function matricesIn(job: PrintJob): Promise<number[][]> {
  const { contents } = await readFile((await print(job)).bytes);
  return contents.flatMap((content) =>
    [...content.matchAll(/q ([-\d. ]+) cm \/X\d+ Do Q/g)].map(([, m = '']) => m.split(' ').map(Number)),
  );
}

describe('print() shows photographs', () => {
  test('as figures with text alternative and caption', async () => {
    const tree = await structureOf((await print(jobWith({ a: LOOM }))).bytes, 1);
    expect(nodesOf(tree, 'Figure')).toMatchObject([{ alt: 'What a shows', contents: 1 }]);
    expect(nodesOf(tree, 'Caption')).toHaveLength(1);
  });

  test('without place, time and camera', async () => {
    expect(latin1(SIDE)).toMatch(PRIVATE);
    const { bytes } = await print(jobWith({ a: SIDE }));
    const [image] = (await readFile(bytes)).streams('Image');
    expect(image?.dictionary).toContain('/DCTDecode');
    expect(latin1(image?.bytes ?? new Uint8Array())).not.toMatch(PRIVATE);
    expect(latin1(bytes)).not.toMatch(PRIVATE);
  });

  test('upright, and in proportion', async () => {
    const [upright, side] = await matricesIn(jobWith({ a: LOOM, b: SIDE }));
    const [width = 0, , , height = 0] = upright ?? [];
    expect(upright?.slice(1, 3)).toEqual([0, 0]);
    expect(width / height).toBeCloseTo(800 / 600, 3);
    // Turned to the right: the stored left edge is seen at the top, and its top edge at the right.
    const [a, b = 0, c = 0, d, e, f = 0] = side ?? [];
    expect([a, d, e]).toEqual([0, 0, upright?.[4]]);
    expect(c).toBeCloseTo(width, 1);
    expect(b).toBeCloseTo(-height, 1);
    expect(f).toBeGreaterThan(height);
  });

  test('once in the file, however often on pages', async () => {
    const { bytes } = await print(jobWith({ a: LOOM }, figure('a').repeat(5)));
    expect((await readFile(bytes)).streams('Image')).toHaveLength(1);
  });

  test('not larger than the column, half a page or their pixels allow', async () => {
    const widths = async (bytes: Uint8Array, more?: string): Promise<number[]> =>
      (await matricesIn(jobWith({ a: bytes }, figure('a', more)))).map(([width = 0]) => Math.round(width));
    expect(await widths(ALPHA)).toEqual([(300 / 150) * 72]);
    expect(await widths(ALPHA, ' data-width-mm="25.4"')).toEqual([72]);
    expect(await widths(ALPHA, ' data-width-mm="254"')).toEqual([144]);
    const tall = (await matricesIn(jobWith({ a: png({ columns: 10, rows: 4000 }) })))[0];
    expect(tall?.[3]).toBeLessThan(0.5 * 842);
  });

  test('in the same bytes each time', async () => {
    const job = jobWith({ a: LOOM, b: SIDE, c: ALPHA });
    const [first, second] = [await print(job), await print(job)];
    expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
  });

  test.each([
    ['a picture that the job does not hold', jobWith({}, figure('a')), 'must hold the picture'],
    ['a picture of an inherited name', jobWith({}, figure('toString')), 'must hold the picture'],
    ['a picture that is none', jobWith({ a: Buffer.from('text') }), 'must pass inspection'],
    ['a picture without alternative', jobWith({ a: LOOM }, '<figure><img src="a"></figure>'), 'alt must say'],
  ])('but throws for %s', async (_, job, message) => {
    await expect(print(job)).rejects.toThrow(message);
  });
});

interface Png {
  columns?: number;
  rows?: number;
  depth?: number;
  colour?: number;
  interlace?: number;
  /** Rows with their filter bytes. */
  samples?: Uint8Array;
  others?: readonly Uint8Array[];
}

// A PNG of the header's own samples; black without.
function png({ columns = 2, rows = 1, depth = 8, colour = 0, interlace = 0, samples, others = [] }: Png): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(columns, 0);
  header.writeUInt32BE(rows, 4);
  header.set([depth, colour, 0, 0, interlace], 8);
  const plain = samples ?? new Uint8Array((columns + 1) * rows);
  return pngOf([chunk('IHDR', header), ...others, chunk('IDAT', deflateSync(plain)), chunk('IEND', new Uint8Array())]);
}

const samplesIn = async (bytes: Uint8Array): Promise<{ dictionary: string; samples: number[] }> => {
  const [image] = (await readFile((await print(jobWith({ a: bytes }))).bytes)).streams('Image');
  const dictionary = image?.dictionary ?? '';
  const [, colours = '1', columns = '1'] =
    /Predictor 15\s*\/Colors (\d)\s*\/BitsPerComponent 8\s*\/Columns (\d+)/.exec(dictionary) ?? [];
  return { dictionary, samples: fromDifferences(Buffer.from(image?.decode() ?? '', 'latin1'), +colours * +columns) };
};

// Rows that begin with a 2 are differences from the one above (PNG, third edition, 9.2).
function fromDifferences(bytes: Buffer, rowBytes: number): number[] {
  let above = Array.from({ length: rowBytes }, () => 0);
  const samples: number[] = [];
  for (let at = 0; at < bytes.length; at += rowBytes + 1) {
    expect(bytes[at]).toBe(2);
    above = above.map((value, i) => (value + (bytes[at + 1 + i] ?? 0)) & 255);
    samples.push(...above);
  }
  return samples;
}

describe('print() shows PNG', () => {
  test('with transparency on white', async () => {
    const rgba = Uint8Array.of(0, ...[255, 0, 0, 255], ...[0, 0, 0, 0], ...[0, 100, 200, 51]);
    const { dictionary, samples } = await samplesIn(png({ columns: 3, colour: 6, samples: rgba }));
    expect(samples).toEqual([255, 0, 0, 255, 255, 255, 204, 224, 244]);
    expect(dictionary).not.toContain('SMask');
  });

  test('with one transparent colour on white', async () => {
    const grey = { samples: Uint8Array.of(0, 7, 8), others: [chunk('tRNS', Uint8Array.of(0, 7))] };
    expect((await samplesIn(png(grey))).samples).toEqual([255, 8]);
  });

  test('with a transparent palette on white, its indices as they are stored', async () => {
    const others = [chunk('PLTE', Uint8Array.of(0, 0, 0, 10, 20, 30)), chunk('tRNS', Uint8Array.of(0))];
    const indexed = png({ columns: 8, depth: 1, colour: 3, samples: Uint8Array.of(0, 0x55), others });
    const [image] = (await readFile((await print(jobWith({ a: indexed }))).bytes)).streams('Image');
    const dictionary = image?.dictionary ?? '';
    expect(dictionary).toContain('<ffffff0a141e>');
    expect(dictionary).toContain('/Predictor 15');
  });

  test('of more rows than are packed in one go', async () => {
    const [columns, rows] = [100, 900];
    const level = (x: number, y: number): number => (7 * x + 13 * y) & 255;
    const line = (y: number): number[] => [0, ...Array.from({ length: columns }, (_, x) => [level(x, y), 255]).flat()];
    const grey = Uint8Array.from(Array.from({ length: rows }, (_, y) => line(y)).flat());
    const { samples } = await samplesIn(png({ columns, rows, colour: 4, samples: grey }));
    expect(samples).toEqual(
      Array.from({ length: columns * rows }, (_, i) => level(i % columns, Math.floor(i / columns))),
    );
  });

  test('with every filter, and interlaced', async () => {
    // Two rows of each filter over samples that rise by 3: what the filters make of them is known.
    const plain = Array.from({ length: 5 }, (_, y) => [0, 1, 2].map((x) => 3 * x + 40 * y));
    const filtered = [
      [0, 0, 3, 6],
      [1, 40, 3, 3],
      [2, 40, 40, 40],
      [3, 80, 22, 22],
      [4, 40, 3, 3],
    ];
    // Predictors of rows three and four, from PNG 9.2: the mean of left and above, and the nearest to their plane.
    filtered[3] = [3, 120 - 40, 123 - ((120 + 83) >> 1), 126 - ((123 + 86) >> 1)];
    filtered[4] = [4, 160 - 120, 163 - 160, 166 - 163];
    const alpha = (rows: number[][]): Uint8Array => Uint8Array.from(rows.flat());
    const others = [chunk('tRNS', Uint8Array.of(0, 255))];
    expect((await samplesIn(png({ columns: 3, rows: 5, samples: alpha(filtered), others }))).samples).toEqual(
      plain.flat(),
    );
    // Adam7 of three columns by five rows: passes 1, 4, 5, 6, 7 and their rows.
    const at = (x: number, y: number): number => plain[y]?.[x] ?? 0;
    const passes = [
      [0, at(0, 0)],
      [0, at(0, 4)],
      [0, at(2, 0)],
      [0, at(2, 4)],
      [0, at(0, 2), at(2, 2)],
      ...[0, 2, 4].map((y) => [0, at(1, y)]),
      ...[1, 3].map((y) => [0, at(0, y), at(1, y), at(2, y)]),
    ];
    expect((await samplesIn(png({ columns: 3, rows: 5, interlace: 1, samples: alpha(passes) }))).samples).toEqual(
      plain.flat(),
    );
  });

  test.each<[string, Uint8Array, string]>([
    ['of too many pixels', png({ columns: 10_000, rows: 10_000, samples: new Uint8Array(9) }), 'too-large'],
    [
      'transparent and of many pixels',
      png({ columns: 4000, rows: 4000, colour: 6, samples: new Uint8Array(9) }),
      'too-large',
    ],
    ['with samples missing', png({ columns: 9, rows: 9, samples: new Uint8Array(9) }), 'damaged'],
    ['with more samples than it says', png({ samples: new Uint8Array(1_000_000) }), 'too-large'],
    ['with a filter that is not known', png({ samples: Uint8Array.of(9, 0, 0) }), 'damaged'],
    ['of a colour type that is not known', png({ colour: 5 }), 'damaged'],
    ['without a palette', png({ colour: 3 }), 'damaged'],
    ['cut short', ALPHA.subarray(0, 3000), 'damaged'],
  ])('but not one %s', async (_, bytes, refusal) => {
    expect(await inspectAttachment(bytes)).toMatchObject({ ok: false, refusal });
  });
});

describe('inspectAttachment() refuses JPEG', () => {
  // The frame header with another number of components or bits.
  const withFrame = (change: (frame: Uint8Array) => void): Uint8Array => {
    const bytes = LOOM.slice();
    const at = latin1(bytes).indexOf('\u00ff\u00c0');
    change(bytes.subarray(at));
    return bytes;
  };
  test.each<[string, Uint8Array, string]>([
    ['of four components', withFrame((frame) => frame.set([4], 9)), 'damaged'],
    ['of twelve bits', withFrame((frame) => frame.set([12], 4)), 'colour'],
    ['of arithmetic coding', withFrame((frame) => frame.set([0xc9], 1)), 'unknown-type'],
    ['of too many pixels', withFrame((frame) => frame.set([255, 255, 255, 255], 5)), 'too-large'],
    ['of two frames', withSegment(LOOM, 0xc0, Buffer.from([8, 0, 9, 0, 9, 1, 1, 0x11, 0])), 'damaged'],
    ['in thousands of scans', scannedOver(LOOM, 3000), 'too-large'],
    ['of no height', withFrame((frame) => frame.set([0, 0], 5)), 'damaged'],
    ['cut short', LOOM.subarray(0, LOOM.length - 100), 'damaged'],
  ])('%s', async (_, bytes, refusal) => {
    expect(await inspectAttachment(bytes)).toMatchObject({ ok: false, refusal });
  });

  test('in CMYK', async () => {
    const frame = [0xff, 0xc0, 0, 20, 8, 0, 1, 0, 1, 4, ...[1, 2, 3, 4].flatMap((id) => [id, 0x11, 0])];
    const bytes = Uint8Array.from([0xff, 0xd8, ...frame, 0xff, 0xda, 0, 2, 0, 0xff, 0xd9]);
    expect(await inspectAttachment(bytes)).toMatchObject({ ok: false, refusal: 'colour' });
  });
});

describe('cleanImage()', () => {
  test('leaves the picture and how it is seen, and nothing else', async () => {
    const clean = cleanImage(SIDE);
    expect(await inspectAttachment(clean)).toEqual(await inspectAttachment(SIDE));
    expect(latin1(clean)).toContain('Exif');
    expect(latin1(clean)).not.toMatch(/Example Camera|2026:11:03|hangar/);
    expect(clean.length).toBeLessThan(SIDE.length);
  });

  test('keeps of a JPEG only what a decoder needs', () => {
    // Every marker that has a segment (ITU-T T.81, table B.1), but for those of frames and scans.
    const markers = Array.from({ length: 0xfe - 0xbf }, (_, i) => 0xc0 + i).filter(
      (marker) => marker > 0xcf && !(marker >= 0xd0 && marker <= 0xda),
    );
    for (const marker of [...markers, 0x02, 0xbf, 0xc8]) {
      const clean = latin1(cleanImage(withSegment(LOOM, marker, Buffer.from('Taken in hangar 4'))));
      // Tables of quantisation and of restarts are the decoder's own.
      expect(clean.includes('hangar 4'), marker.toString(16)).toBe([0xdb, 0xdd].includes(marker));
    }
  });

  test('drops what stands after the end', () => {
    for (const bytes of [LOOM, ALPHA]) {
      const more = new Uint8Array(Buffer.concat([bytes, Buffer.from('position 12 34')]));
      expect(latin1(cleanImage(more))).not.toContain('position');
    }
  });

  test('drops comments and other chunks of a PNG', () => {
    const bytes = png({ others: [chunk('tEXt', Buffer.from('Author\0Ida')), chunk('sRGB', Uint8Array.of(0))] });
    expect(latin1(cleanImage(bytes))).not.toContain('Ida');
    expect(latin1(cleanImage(bytes))).toContain('sRGB');
  });

  test('changes nothing twice', () => {
    for (const bytes of [LOOM, SIDE, ALPHA]) {
      const once = cleanImage(bytes);
      expect(Buffer.from(cleanImage(once)).equals(Buffer.from(once))).toBe(true);
    }
  });

  test('throws for what is no picture', () => {
    expect(() => cleanImage(attachment('scripted.pdf'))).toThrow('neither');
  });
});
