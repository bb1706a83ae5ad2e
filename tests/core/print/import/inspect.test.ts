import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../../worker/core/limits.ts';
import { inspectAttachment } from '../../../../worker/core/print/index.ts';
import { saidFault } from '../../../../worker/core/text/faults.ts';
import { inEnglish } from '../../../../worker/core/text/formatter.ts';
import { attachment, latin1, type OnePage, onePage, pdfOf, streamOf } from './pdf-of.ts';

describe('inspectAttachment() tells the fixtures', () => {
  test.each([
    ['loom.jpg', { ok: true, kind: 'jpeg', widthPx: 800, heightPx: 600, work: { unpackedPixels: 0 } }],
    ['loom-on-its-side.jpg', { ok: true, kind: 'jpeg', widthPx: 800, heightPx: 600, work: { unpackedPixels: 0 } }],
    [
      'connector-with-alpha.png',
      { ok: true, kind: 'png', widthPx: 300, heightPx: 200, work: { unpackedPixels: 60_000 } },
    ],
    [
      'release-certificate.pdf',
      {
        ok: true,
        kind: 'pdf',
        pages: 2,
        obstacles: [],
        work: { unpackedBytes: 23_215, objects: 5_677, tokens: 3_845 },
      },
    ],
    [
      'data-sheet-font-not-embedded.pdf',
      {
        ok: true,
        kind: 'pdf',
        pages: 1,
        work: { unpackedBytes: 0, objects: 95, tokens: 112 },
        obstacles: [{ id: 'font-not-embedded', values: { name: 'Helvetica' } }, { id: 'not-itself-claim-pdf' }],
      },
    ],
    ['encrypted.pdf', { ok: false, refusal: 'encrypted', detail: { id: 'encrypted' } }],
    ['scripted.pdf', { ok: false, refusal: 'scripted', detail: { id: 'holds-scripts' } }],
    ['truncated.pdf', { ok: false, refusal: 'damaged', detail: { id: 'ends-early' } }],
  ])('%s', async (name, expected) => {
    expect(await inspectAttachment(attachment(name))).toEqual(expected);
  });

  test.each([['nothing'], ['<!doctype html><p>%PDF'], ['GIF89a']])('neither PDF nor picture: %s', async (text) => {
    expect(await inspectAttachment(Buffer.from(text))).toMatchObject({ ok: false, refusal: 'unknown-type' });
  });
});

const refusalOf = async (bytes: Uint8Array): Promise<string> => {
  const inspected = await inspectAttachment(bytes);
  return inspected.ok ? 'none' : `${inspected.refusal}: ${inEnglish(saidFault(inspected.detail))}`;
};

describe('inspectAttachment() refuses what acts or carries', () => {
  const unused = (object: string): OnePage => ({ objects: [object] });
  test.each<[string, OnePage]>([
    ['a script by name', { catalogue: '/Names<</JavaScript<</Names[]>>>>' }],
    ['a script spelt in numbers', unused('<</S/J#61vaScript/J#53(1)>>')],
    ['an action on opening', { catalogue: '/OpenAction<</S/URI/URI(x)>>' }],
    ['further actions', { page: '/AA<</O<</S/GoTo>>>>' }],
    ['a program to start', { page: '/Annots[<</Subtype/Link/Rect[0 0 1 1]/A<</S/Launch/F(x)>>>>]' }],
    ['embedded files', { catalogue: '/Names<</EmbeddedFiles<</Names[]>>>>' }],
    ['a file that nothing leads to', unused(streamOf('x', '/Type/EmbeddedFile'))],
    ['an attached file', { page: '/Annots[<</Subtype/FileAttachment/Rect[0 0 1 1]>>]' }],
    ['a form that is a program', { catalogue: '/AcroForm<</XFA[]>>' }],
    ['film', { page: '/Annots[<</Subtype/RichMedia/Rect[0 0 1 1]>>]' }],
    ['layers that are off', { catalogue: '/OCProperties<</D<</OFF[6 0 R]>>>>', objects: ['<</Type/OCG>>'] }],
    [
      'content of other files',
      { content: '/X Do', resources: '/XObject<</X 6 0 R>>', objects: [streamOf('', '/Subtype/Image/F(x)')] },
    ],
  ])('%s', async (_, given) => {
    expect(await refusalOf(onePage(given))).toMatch(/^scripted: /);
  });

  test('but not a place to open at, or links', async () => {
    const page = '/Annots[<</Subtype/Link/Rect[0 0 1 1]/A<</S/URI/URI(x)>>>>]';
    expect(await refusalOf(onePage({ catalogue: '/OpenAction[3 0 R/Fit]', page }))).toBe('none');
    expect(await refusalOf(onePage({ catalogue: '/OpenAction<</S/GoTo/D[3 0 R/Fit]>>' }))).toBe('none');
  });
});

describe('inspectAttachment() refuses what is too large', () => {
  test('in bytes, before it is looked at', async () => {
    expect(await refusalOf(new Uint8Array(LIMITS.annexBytes + 1))).toBe(
      'too-large: it has 10.0 MB, and 10 MB are the most',
    );
  });

  test('in pages', async () => {
    const many = (count: number): Uint8Array => {
      const kids = Array.from({ length: count }, (_, i) => `${i + 3} 0 R`).join(' ');
      const page = '<</Type/Page/MediaBox[0 0 9 9]>>';
      return pdfOf(['<</Pages 2 0 R>>', `<</Kids[${kids}]>>`, ...Array.from({ length: count }, () => page)]);
    };
    expect(await refusalOf(many(LIMITS.annexPages))).toBe('none');
    expect(await refusalOf(many(LIMITS.annexPages + 1))).toBe('too-large: it has more than 60 pages');
  });

  test('unpacked, once or twice over, whole or in parts', async () => {
    const packed = deflateSync(Buffer.alloc(10_000_000, 0x20), { level: 9 });
    const content = (object: string): Uint8Array => onePage({ page: '/Contents 6 0 R', objects: [object] });
    const once = streamOf(latin1(packed), '/Filter/FlateDecode');
    expect(await refusalOf(content(once))).toBe('none');
    const bomb = deflateSync(Buffer.alloc(40_000_000, 0x20), { level: 9 });
    expect(await refusalOf(content(streamOf(latin1(bomb), '/Filter/FlateDecode')))).toMatch(/too-large: .* 16 MB/);
    const twice = streamOf(latin1(deflateSync(bomb, { level: 9 })), '/Filter[/FlateDecode/FlateDecode]');
    expect(await refusalOf(content(twice))).toMatch(/^too-large: /);
    const parts = onePage({ page: '/Contents[6 0 R 7 0 R]', objects: [once, once] });
    expect(await refusalOf(parts)).toMatch(/^too-large: /);
  });

  test('in objects, tiny or overlapping', async () => {
    const tiny = onePage({ objects: [`[${'<<>>'.repeat(1_000_000)}]`] });
    expect(await refusalOf(tiny)).toMatch(/more objects than a paper needs/);
    // Each object is a string that reaches to the end of the file, over all objects after it.
    const count = 20_000;
    const open = Array.from({ length: count }, (_, i) => `${i + 6} 0 obj (`);
    const bytes = latin1(onePage({ objects: [`${open.join(' '.repeat(100))}${')'.repeat(count)}`] }));
    let at = bytes.indexOf('6 0 obj (');
    const entries = open.map((_, i) => {
      at = bytes.indexOf(`${i + 6} 0 obj (`, at);
      return `${String(at).padStart(10, '0')} 00000 n \n`;
    });
    const table = `xref\n6 ${count}\n${entries.join('')}trailer\n<</Root 1 0 R/Prev ${bytes.lastIndexOf('xref\n0')}>>`;
    const overlapping = `${bytes}${table}\nstartxref\n${bytes.length}\n%%EOF`;
    expect(await refusalOf(Buffer.from(overlapping, 'latin1'))).toMatch(/more objects than a paper needs/);
  });

  test('in pixels', async () => {
    const image = streamOf('', '/Subtype/Image/Width 10000/Height 10000');
    const given = { resources: '/XObject<</X 6 0 R>>', objects: [image] };
    expect(await refusalOf(onePage(given))).toMatch(/too-large: .* 40 million/);
  });
});

describe('inspectAttachment() refuses what is damaged', () => {
  test.each<[string, OnePage]>([
    [
      'content that does not unpack',
      { page: '/Contents 6 0 R', objects: [streamOf('not packed', '/Filter/FlateDecode')] },
    ],
    ['content that is missing', { page: '/Contents[4 0 R 99 0 R]' }],
    ['a filter that is not known', { page: '/Contents 6 0 R', objects: [streamOf('x', '/Filter/DCTDecode')] }],
    ['pages of no size', { page: '/CropBox[500 500 600 600]' }],
    ['a stream of another length', { page: '/Contents 6 0 R', objects: ['<</Length 3>>stream\nabcdef\nendstream'] }],
    ['nesting without end', { objects: [`${'['.repeat(10_000)}${']'.repeat(10_000)}`] }],
    ['a filled field without a look', { page: '/Annots[<</Subtype/Widget/FT/Tx/V(88213)/Rect[0 0 90 20]>>]' }],
  ])('%s', async (_, given) => {
    expect(await refusalOf(onePage(given))).toMatch(/^damaged: /);
  });

  test('page trees that lead nowhere or in a circle', async () => {
    expect(await refusalOf(pdfOf(['<</Pages 2 0 R>>', '<</Kids[]>>']))).toBe('damaged: it has no pages');
    expect(await refusalOf(pdfOf(['<</Pages 2 0 R>>', '<</Kids[9 0 R]>>']))).toBe('damaged: a page is missing');
    expect(await refusalOf(pdfOf(['<</Pages 2 0 R>>', '<</Kids[2 0 R]>>']))).toMatch(/damaged: .* back/);
    expect(await refusalOf(pdfOf(['<<>>']))).toBe('damaged: it has no pages');
  });
});

describe('inspectAttachment() names what stands against archival claims', () => {
  const image = (entries: string): OnePage => ({
    resources: '/XObject<</X 6 0 R>>',
    objects: [streamOf('', `/Subtype/Image/Width 1/Height 1${entries}`)],
  });
  test.each<[string, OnePage]>([
    ['CMYK colour', { content: '1 0 0 0 k' }],
    ['CMYK colour', { content: '/DeviceCMYK cs' }],
    ['CMYK colour', image('/ColorSpace/DeviceCMYK')],
    ['CMYK colour', { resources: '/ColorSpace<</C[/Separation/Gold/DeviceCMYK 6 0 R]>>', objects: [streamOf('')] }],
    ['CMYK colour', { content: 'BI /W 1 /H 1 /CS /CMYK /BPC 8 ID abcd EI' }],
    ['LZW', { content: 'BI /W 1 /H 1 /CS /G /BPC 8 /F /LZW ID \u0080\u000b\u0060\u0050 EI' }],
    ['PostScript', { resources: '/XObject<</X 6 0 R>>', objects: [streamOf('showpage', '/Subtype/PS')] }],
    ['does not define', { content: '1 2 nonsense' }],
    ['printer', { resources: '/ExtGState<</G<</TR/Identity>>>>' }],
    ['blends', { resources: '/ExtGState<</G<</BM/Sparkle>>>>' }],
    [
      'which text its codes stand for',
      { fonts: '/F2<</Type/Font/Subtype/Type1/BaseFont/Symbol/FontDescriptor<</FontFile 4 0 R>>>>' },
    ],
  ])('%s', async (words, given) => {
    const inspected = await inspectAttachment(onePage(given));
    expect(inspected).toMatchObject({ ok: true });
    const obstacles = inspected.ok && inspected.kind === 'pdf' ? inspected.obstacles : [];
    expect(obstacles.map((fault) => inEnglish(saidFault(fault))).join('; ')).toContain(words);
  });

  test.each([
    ['<pdfaid:part>2</pdfaid:part>', true],
    ["<rdf:Description pdfaid:part='1'/>", true],
    ['<pdfaid:part>4</pdfaid:part>', false],
    ['<x:xmpmeta/>', false],
  ])('and takes %s for what it is', async (metadata, claims) => {
    const bytes = onePage({
      catalogue: '/Metadata 6 0 R',
      objects: [streamOf(metadata, '/Type/Metadata/Subtype/XML')],
    });
    const inspected = await inspectAttachment(bytes);
    const obstacles = inspected.ok && inspected.kind === 'pdf' ? inspected.obstacles : [];
    expect(obstacles.some(({ id }) => id === 'not-itself-claim-pdf')).toBe(!claims);
  });
});
