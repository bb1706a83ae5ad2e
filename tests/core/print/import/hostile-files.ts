import { deflateSync } from 'node:zlib';
import { chunk, pngOf } from '../../../../worker/core/print/picture/png-chunks.ts';
import { attachment, latin1, type OnePage, onePage, pdfOf, streamOf } from './pdf-of.ts';

// Files that were made to stop, to swell, to speak or to slip through. Each is made when it is asked for.

const packed = (bytes: Uint8Array, level = 9): string => latin1(deflateSync(bytes, { level }));
const deflated = (bytes: Uint8Array, entries = ''): string => streamOf(packed(bytes), `/Filter/FlateDecode${entries}`);
const repeated = (text: string, count: number): Uint8Array => Buffer.from(text.repeat(count));

/** A page whose content is an object of its own. */
const content = (object: string, { objects = [], ...more }: OnePage = {}): Uint8Array =>
  onePage({ page: '/Contents 6 0 R', objects: [object, ...objects], ...more });

/** A page that shows an image. */
export const showing = (entries: string, bytes: string, more: OnePage = {}): Uint8Array =>
  onePage({
    content: 'q 100 0 0 100 0 0 cm /I Do Q',
    resources: '/XObject<</I 6 0 R>>',
    objects: [streamOf(bytes, `/Type/XObject/Subtype/Image${entries}`), ...(more.objects ?? [])],
  });

const RGB = '/ColorSpace/DeviceRGB/BitsPerComponent 8';
const GREY = '/ColorSpace/DeviceGray/BitsPerComponent 8';

/** A photograph with place, time and camera, and its frame. */
export const PHOTOGRAPH = attachment('loom-on-its-side.jpg');
export const PHOTOGRAPH_SIZE = '/Width 600/Height 800';

/** What a slot for a seal begins with, with room for a seal. */
export const SLOT = `stream\nslipmark-seal/1 ${' '.repeat(1800)}`;

/** A JPEG with a segment put in behind its first marker. */
export function withSegment(jpeg: Uint8Array, marker: number, body: Uint8Array): Uint8Array {
  const length = body.length + 2;
  const head = Uint8Array.of(0xff, marker, length >> 8, length & 255);
  return new Uint8Array(Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]));
}

/** Forms of which each shows the next ten times. */
function nestedForms(depth: number): Uint8Array {
  const form = (i: number): string => {
    const isLast = i === depth - 1;
    const next = isLast ? '' : `/X ${7 + i} 0 R`;
    const drawn = isLast ? '0 0 1 1 re f' : '/X Do '.repeat(10);
    return streamOf(drawn, `/Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<<${next}>>>>`);
  };
  return onePage({
    content: '/X Do',
    resources: '/XObject<</X 6 0 R>>',
    objects: Array.from({ length: depth }, (_, i) => form(i)),
  });
}

/** Fonts of drawn letters, each letter a line in the next font. */
function nestedLetters(depth: number): Uint8Array {
  const font = (i: number): string =>
    `<</Type/Font/Subtype/Type3/FontBBox[0 0 9 9]/FontMatrix[1 0 0 1 0 0]/CharProcs<</a ${7 + 2 * i} 0 R>>/Encoding<</Differences[97/a]>>/FirstChar 97/LastChar 97/Widths[9]/Resources<</Font<<${i + 1 < depth ? `/N ${8 + 2 * i} 0 R` : ''}>>>>>>`;
  const letter = (i: number): string =>
    streamOf(i + 1 < depth ? `9 0 d0 BT /N 1 Tf (${'a'.repeat(100)}) Tj ET` : '9 0 d0 0 0 1 1 re f');
  return onePage({
    content: 'BT /T 1 Tf (a) Tj ET',
    fonts: '/T 6 0 R',
    objects: Array.from({ length: depth }, (_, i) => [font(i), letter(i)]).flat(),
  });
}

const pattern = (step: string): Uint8Array =>
  onePage({
    content: '/Pattern cs /P scn 0 0 400 300 re f',
    resources: '/Pattern<</P 6 0 R>>',
    objects: [streamOf('0 0 1 1 re f', `/PatternType 1/PaintType 1/TilingType 1/BBox[0 0 9 9]${step}/Resources<<>>`)],
  });

/** A table of objects that are all deleted, a byte for each. */
function hugeTable(entries: number): Uint8Array {
  const table = `3 0 obj\n${deflated(new Uint8Array(entries), `/Type/XRef/W[1 0 0]/Size ${entries}/Root 1 0 R`)}\nendobj\n`;
  const objects = '%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Kids[]>>endobj\n';
  return Buffer.from(`${objects}${table}startxref\n${objects.length}\n%%EOF`, 'latin1');
}

/** A PNG of one colour with transparency. */
export function transparentPng(columns: number, rows: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(columns, 0);
  header.writeUInt32BE(rows, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const samples = deflateSync(Buffer.alloc((1 + 4 * columns) * rows), { level: 9 });
  return pngOf([chunk('IHDR', header), chunk('IDAT', samples), chunk('IEND', new Uint8Array())]);
}

/** A PNG whose samples are stored as they are, and are what a slot begins with. */
function pngWithSlot(): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(SLOT.length, 0);
  header.writeUInt32BE(1, 4);
  header.set([8, 0, 0, 0, 0], 8);
  const samples = deflateSync(Buffer.concat([Uint8Array.of(0), Buffer.from(SLOT)]), { level: 0 });
  return pngOf([chunk('IHDR', header), chunk('IDAT', samples), chunk('IEND', new Uint8Array())]);
}

/** A JPEG in so many scans. */
export function scannedOver(jpeg: Uint8Array, scans: number): Uint8Array {
  const bytes = Buffer.from(jpeg);
  const at = bytes.indexOf(Uint8Array.of(0xff, 0xda));
  const scan = bytes.subarray(at, at + 2 + bytes.readUInt16BE(at + 2));
  return new Uint8Array(
    Buffer.concat([bytes.subarray(0, at), ...Array.from({ length: scans - 1 }, () => scan), bytes.subarray(at)]),
  );
}

/** A JPEG whose frame says another size. */
export function ofFrame(jpeg: Uint8Array, columns: number, rows: number): Uint8Array {
  const bytes = Buffer.from(jpeg);
  const at = bytes.indexOf(Uint8Array.of(0xff, 0xc0));
  bytes.writeUInt16BE(rows, at + 5);
  bytes.writeUInt16BE(columns, at + 7);
  return new Uint8Array(bytes);
}

const manyFonts = (count: number): Uint8Array => {
  const name = (i: number): string => `F${i}-${'LongNameOfAFont'.repeat(6)}`;
  const fonts = Array.from({ length: count }, (_, i) => `/M${i} <</Type/Font/Subtype/Type1/BaseFont/${name(i)}>>`);
  return onePage({ fonts: fonts.join('') });
};

const chained = (count: number): Uint8Array =>
  onePage({
    resources: '/Shading<</S 6 0 R>>',
    objects: Array.from({ length: count }, (_, i) => (i + 1 < count ? `<</Next ${7 + i} 0 R>>` : '<<>>')),
  });

const inks = (name: string, tint: string): Uint8Array =>
  onePage({
    resources: `/ColorSpace<</C[/Separation/${name}/DeviceRGB 6 0 R]>>`,
    objects: [`<</FunctionType 2/Domain[0 1]/N 1/C0[1 1 1]/C1[${tint}]>>`],
  });

/** Sixty pages of one content, with a font F. */
const sixtyPages = (stream: string): Uint8Array =>
  pdfOf([
    '<</Type/Catalog/Pages 2 0 R>>',
    `<</Type/Pages/Count 60/Kids[${Array.from({ length: 60 }, (_, i) => `${i + 5} 0 R`).join(' ')}]>>`,
    stream,
    '<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>',
    ...Array.from(
      { length: 60 },
      () => '<</Type/Page/Parent 2 0 R/MediaBox[0 0 400 300]/Contents 3 0 R/Resources<</Font<</F 4 0 R>>>>>>',
    ),
  ]);

/** A page with a string in a font whose codes, and whose text, are in tables of the file. */
const composite = (string: Uint8Array, encoding: string, text: string): Uint8Array =>
  content(deflated(Buffer.concat([Buffer.from('BT /F2 20 Tf ('), string, Buffer.from(') Tj ET')])), {
    fonts: '/F2 7 0 R',
    objects: [
      '<</Type/Font/Subtype/Type0/BaseFont/X/Encoding 8 0 R/ToUnicode 9 0 R/DescendantFonts[10 0 R]>>',
      deflated(Buffer.from(encoding)),
      deflated(Buffer.from(text)),
      '<</Type/Font/Subtype/CIDFontType2/BaseFont/X>>',
    ],
  });

const SPACE = '<A0FFFF10> <A0FFFF10> ';

/** Streams of which each reaches to the same blanks, over all that begin behind it. */
function overlappingStreams(count: number, blanks: number): Uint8Array {
  const text = latin1(pdfOf(['<</Type/Catalog/Pages 2 0 R>>', '<</Type/Pages/Kids[3 0 R]/Count 1>>']));
  const start = text.indexOf('xref');
  const length = 60;
  const end = start + count * length;
  let streams = '';
  const offsets = [...text.matchAll(/\d+ 0 obj/g)].map(({ index }) => index);
  for (let i = 0; i < count; i++) {
    const at = start + i * length;
    offsets.push(at);
    const head = `${offsets.length} 0 obj<</Length ${end - at - length}`;
    streams += `${head.padEnd(length - 9)}>>stream\n`;
  }
  const body = `${text.slice(0, start)}${streams}${' '.repeat(blanks)}endstream endobj\n`;
  const table = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const trailer = `trailer\n<</Size ${offsets.length + 1}/Root 1 0 R>>\nstartxref\n${body.length}\n%%EOF\n`;
  return Buffer.from(`${body}xref\n0 ${offsets.length + 1}\n0000000000 65535 f \n${table}${trailer}`, 'latin1');
}

/** Graphics states that all name one long list of modes. */
const sharedModes = (states: number, modes: number): Uint8Array =>
  onePage({
    resources: `/ExtGState<<${Array.from({ length: states }, (_, i) => `/G${i} ${7 + i} 0 R`).join('')}>>`,
    objects: [`[${'/a '.repeat(modes)}]`, ...Array.from({ length: states }, () => '<</BM 6 0 R>>')],
  });

/** Fonts of drawn letters that all name one long list of names. */
const sharedNames = (fonts: number, names: number): Uint8Array =>
  onePage({
    page: '/Contents 6 0 R',
    fonts: Array.from({ length: fonts }, (_, i) => `/G${i} ${8 + i} 0 R`).join(''),
    objects: [
      deflated(Buffer.from(Array.from({ length: fonts }, (_, i) => `/G${i} 1 Tf (a) Tj`).join(' '))),
      `[${'/a '.repeat(names)}]`,
      ...Array.from({ length: fonts }, () => '<</Type/Font/Subtype/Type3/Encoding<</Differences 7 0 R>>>>'),
    ],
  });

/** Stamps that all name one long list as their box. */
const sharedBoxes = (stamps: number, numbers: number): Uint8Array =>
  onePage({
    page: `/Annots[${Array.from({ length: stamps }, (_, i) => `${8 + i} 0 R`).join(' ')}]`,
    objects: [
      `[0 0 1 1 ${'1 '.repeat(numbers)}]`,
      streamOf('', '/Type/XObject/Subtype/Form/BBox[0 0 1 1]'),
      ...Array.from({ length: stamps }, () => '<</Subtype/Stamp/Rect 6 0 R/AP<</N 7 0 R>>>>'),
    ],
  });

/** Every hostile file by what it is. */
export const HOSTILE_FILES: Readonly<Record<string, () => Uint8Array>> = {
  'blanks as digits, twenty times over': () =>
    onePage({
      page: `/Contents[${'6 0 R '.repeat(20)}]`,
      objects: [
        streamOf(
          packed(Buffer.concat([Buffer.from('>'), Buffer.alloc(30_000_000, 0x20)])),
          '/Filter[/FlateDecode/ASCIIHexDecode]',
        ),
      ],
    }),
  'millions of marks': () => content(deflated(repeated('BMC ', 7_700_000))),
  'millions of operators': () => content(deflated(repeated('f ', 7_900_000))),
  'millions of empty strings': () => content(deflated(repeated('()', 7_900_000))),
  'zeros as text': () =>
    content(streamOf(packed(Buffer.alloc(8_000_000, 0x7a)), '/Filter[/FlateDecode/ASCII85Decode]')),
  'runs of two bytes': () =>
    content(streamOf(packed(repeated('\u0000a', 7_900_000)), '/Filter[/FlateDecode/RunLengthDecode]')),
  'one content on sixty pages': () =>
    pdfOf([
      '<</Type/Catalog/Pages 2 0 R>>',
      `<</Type/Pages/Count 60/Kids[${Array.from({ length: 60 }, (_, i) => `${i + 4} 0 R`).join(' ')}]>>`,
      deflated(repeated('n ', 200_000)),
      ...Array.from({ length: 60 }, () => '<</Type/Page/Parent 2 0 R/MediaBox[0 0 400 300]/Contents 3 0 R>>'),
    ]),
  'a string cut by a hundred code spaces': () =>
    composite(
      Buffer.alloc(15_600_000, Buffer.from([0xa0, 0, 0, 1])),
      `begincmap 100 begincodespacerange ${SPACE.repeat(99)}<00000000> <FFFFFFFF> endcodespacerange endcmap`,
      '1 beginbfrange <00000000> <FFFFFFFF> <0041> endbfrange',
    ),
  'text of millions of letters for each code': () =>
    composite(
      Buffer.from(Array.from({ length: 65_536 }, (_, i) => [i >> 8, i & 255]).flat()).map((byte: number) =>
        [0x28, 0x29, 0x5c, 0x0d].includes(byte) ? 0x30 : byte,
      ),
      'begincmap 1 begincodespacerange <0000> <FFFF> endcodespacerange endcmap',
      `1 beginbfrange <0000> <FFFF> <${'0041'.repeat(2_000_000)}> endbfrange`,
    ),
  'millions of texts of a font': () =>
    composite(
      Buffer.alloc(2),
      'begincmap 1 begincodespacerange <0000> <FFFF> endcodespacerange endcmap',
      `1 beginbfchar ${'<0>'.repeat(3_900_000)} endbfchar`,
    ),
  'a string on sixty pages': () => sixtyPages(deflated(repeated(`BT /F 1 Tf (${'a'.repeat(15_900_000)}) Tj ET`, 1))),
  'blanks on sixty pages': () => sixtyPages(deflated(repeated(' ', 15_900_000))),
  'millions of strings before an operator': () => content(deflated(repeated('()', 3_900_000))),
  'a list of millions within a picture': () =>
    content(deflated(repeated(`BI /W 1/H 1/DP [${'/ '.repeat(3_900_000)}] ID x EI`, 1))),
  'modes of one list in thousands of states': () => sharedModes(5000, 200_000),
  'names of one list in thousands of fonts': () => sharedNames(5000, 200_000),
  'numbers of one list in thousands of stamps': () => sharedBoxes(5000, 200_000),
  'a number of a million digits that is none': () => onePage({ objects: [`${'1'.repeat(1_000_000)}x`] }),
  'streams that end in the same blanks': () => overlappingStreams(20_000, 6_000_000),
  'forms drawn ten billion times': () => nestedForms(13),
  'letters drawn ten billion times': () => nestedLetters(8),
  'forms that draw themselves': () =>
    onePage({
      content: '/X Do',
      resources: '/XObject<</X 6 0 R>>',
      objects: [streamOf('/X Do', '/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<</X 6 0 R>>>>')],
    }),
  'a picture shown a million times': () => {
    const image = deflated(new Uint8Array(4_000_000), `/Type/XObject/Subtype/Image/Width 2000/Height 2000${GREY}`);
    return onePage({
      page: '/Contents 6 0 R',
      resources: '/XObject<</I 7 0 R>>',
      objects: [deflated(repeated('/I Do ', 1_000_000)), image],
    });
  },
  'masks within masks': () =>
    onePage({
      content: '/G gs '.repeat(100),
      resources: '/ExtGState<</G<</SMask<</S/Luminosity/G 6 0 R>>>>>>',
      objects: [deflated(repeated('n ', 1_000_000), '/Subtype/Form/BBox[0 0 9 9]')],
    }),
  'a pattern without an end': () => pattern('/XStep .0001/YStep .0001'),
  'a pattern without a step': () => pattern('/XStep 0/YStep 0'),
  'a table of millions': () => hugeTable(15_000_000),
  'a chain of objects': () => chained(20_000),
  'a tree of pages as deep as it is long': () => {
    const nodes = Array.from({ length: 5000 }, (_, i) => `<</Kids[${i + 3} 0 R]>>`);
    return pdfOf(['<</Type/Catalog/Pages 2 0 R>>', ...nodes, '<</Type/Page/MediaBox[0 0 9 9]>>']);
  },
  'a picture of a pixel that unpacks to a hundred million': () =>
    showing(`/Width 1/Height 1${GREY}/Filter/FlateDecode`, packed(new Uint8Array(100_000_000))),
  'a font that unpacks to a billion': () =>
    onePage({
      fonts: `/G<</Type/Font/Subtype/TrueType/BaseFont/Big/FontDescriptor<</FontName/Big/FontFile2 6 0 R>>>>`,
      objects: [deflated(new Uint8Array(450_000_000))],
    }),
  'a photograph of four billion pixels behind a small one': () =>
    showing(`/Width 60/Height 60${RGB}/Filter/DCTDecode`, latin1(ofFrame(attachment('loom.jpg'), 65_000, 65_000))),
  'a photograph of other sizes': () => showing(`/Width 60/Height 60${RGB}/Filter/DCTDecode`, latin1(PHOTOGRAPH)),
  'a photograph in thousands of scans': () =>
    showing(`${PHOTOGRAPH_SIZE}${RGB}/Filter/DCTDecode`, latin1(scannedOver(PHOTOGRAPH, 5000))),
  'a photograph that is none': () => showing(`/Width 60/Height 60${RGB}/Filter/DCTDecode`, 'rubbish'),
  'a photograph with its place': () => showing(`${PHOTOGRAPH_SIZE}${RGB}/Filter/DCTDecode`, latin1(PHOTOGRAPH)),
  'a photograph with its place, packed again': () =>
    showing(`${PHOTOGRAPH_SIZE}${RGB}/Filter[/FlateDecode/DCTDecode]`, packed(PHOTOGRAPH)),
  'a photograph with its place, within a page': () =>
    onePage({
      content: `q 9 0 0 9 0 0 cm BI /W 600 /H 800 /CS /RGB /BPC 8 /F /DCT ID ${latin1(PHOTOGRAPH)}\nEI Q`,
    }),
  'a picture by JBIG2': () =>
    showing(`/Width 60/Height 60/ColorSpace/DeviceGray/BitsPerComponent 1/Filter/JBIG2Decode`, 'x'),
  'a picture by JPEG 2000': () => showing('/Width 60/Height 60/Filter/JPXDecode', 'x'),
  'a fax without an end': () =>
    showing(
      '/Width 1728/Height 100/ColorSpace/DeviceGray/BitsPerComponent 1/Filter/CCITTFaxDecode/DecodeParms<</K -1>>',
      '\u00ff'.repeat(100_000),
    ),
  'a picture with what a slot begins with': () =>
    showing(`/Width ${SLOT.length}/Height 1${GREY}/Filter/FlateDecode`, packed(Buffer.from(SLOT), 0)),
  'a picture that is not packed, with what a slot begins with': () =>
    showing(`/Width ${SLOT.length}/Height 1${GREY}`, SLOT),
  'a photograph with what a slot begins with in a paper': () =>
    showing(`${PHOTOGRAPH_SIZE}${RGB}/Filter/DCTDecode`, latin1(withSegment(PHOTOGRAPH, 0xdb, Buffer.from(SLOT)))),
  'a photograph with what a slot begins with, in a segment of its own': () =>
    withSegment(PHOTOGRAPH, 0xf0, Buffer.from(SLOT)),
  'a photograph with what a slot begins with, among its tables': () => withSegment(PHOTOGRAPH, 0xdb, Buffer.from(SLOT)),
  'a PNG with what a slot begins with': pngWithSlot,
  'forty fonts that are not embedded': () => manyFonts(40),
  'an ink': () => inks('Gold', '.8 .6 0'),
  'an ink of the same name': () => inks('Gold', '.9 .7 0'),
  'seven inks': () =>
    onePage({
      resources: `/ColorSpace<<${Array.from({ length: 7 }, (_, i) => `/C${i}[/Separation/Ink${i}/DeviceRGB 6 0 R]`).join('')}>>`,
      objects: ['<</FunctionType 2/Domain[0 1]/N 1/C0[1 1 1]/C1[0 0 0]>>'],
    }),
  'a transparent PNG of ten million pixels': () => transparentPng(4000, 2500),
  'another transparent PNG of ten million pixels': () => transparentPng(2500, 4000),
  'a third transparent PNG of ten million pixels': () => transparentPng(5000, 2000),
  'a fourth transparent PNG of ten million pixels': () => transparentPng(2000, 5000),
  'a PNG of millions of rows': () => transparentPng(1, 9_000_000),
};
