import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { type Printed, type PrintJob, print } from '../../../../worker/core/print/index.ts';
import { PAPER_NAMES } from '../../../../worker/core/units/paper-size.ts';
import { pagePictures } from '../../pack/pages/page-pictures.ts';
import { archivalDefects } from '../archival/checks.ts';
import { nodesOf, openFile, pageTexts, structureOf } from '../read-back.ts';
import { jobOf } from '../sample-job.ts';
import { attachment, latin1, type OnePage, onePage, streamOf } from './pdf-of.ts';
import { readFile } from './read-file.ts';

function jobWith(bytes: Uint8Array, more: Partial<PrintJob> = {}): PrintJob {
  const html = '<article id="annex" lang="en"><h1>Annex</h1><p>Follows.</p></article>';
  const last = { id: 'last', title: 'Last', html: '<article id="last" lang="en"><h1>Last</h1></article>' };
  const annex = { id: 'annex', title: 'Annex 1', html, appended: { bytes, title: 'Certificate' } };
  return jobOf('', { documents: [annex, last], ...more });
}

const printed = (bytes: Uint8Array, more?: Partial<PrintJob>): Promise<Printed> => print(jobWith(bytes, more));
const CERTIFICATE = attachment('release-certificate.pdf');

describe('print() with an appended PDF', () => {
  test('puts its pages after the document, within our head and foot, and counts on', async () => {
    const { bytes, pages, startPage } = await printed(CERTIFICATE);
    const texts = await pageTexts(bytes);
    expect([pages, startPage]).toEqual([4, { annex: 1, last: 4 }]);
    expect(texts[1]).toContain('Release certificate number');
    expect(texts[2]).toContain('Receiver sensitivity');
    for (const i of [1, 2]) {
      expect(texts[i]).toContain(`page ${i + 1} of 4`);
      expect(texts[i]).toContain('Annex 1');
      expect(texts[i]).toContain('Pack Q-SLM-P3');
    }
  });

  test('tags each page as one figure that says which it is', async () => {
    const { bytes } = await printed(CERTIFICATE);
    for (const page of [2, 3]) {
      const figures = nodesOf(await structureOf(bytes, page), 'Figure');
      expect(figures).toMatchObject([{ alt: `Certificate, page ${page - 1} of 2`, contents: 1, children: [] }]);
    }
  });

  test('gives the first page a bookmark', async () => {
    const [annex] = await (await openFile((await printed(CERTIFICATE)).bytes)).getOutline();
    expect(annex?.items.map((item: { title: string }) => item.title)).toEqual(['Certificate, page 1 of 2']);
  });

  test('draws the mark over its pages, and beneath others', async () => {
    const { bytes } = await printed(CERTIFICATE, { mark: 'NOT RELEASED' });
    const { contents } = await readFile(bytes);
    for (const text of await pageTexts(bytes)) expect(text.match(/NOT RELEASED/g)).toHaveLength(2);
    const outlined = contents.map((content) => content.indexOf('1 Tr') > content.indexOf(' Do Q'));
    expect(contents.map((content) => content.includes(' Do Q'))).toEqual([false, true, true, false]);
    expect(outlined.slice(1, 3)).toEqual([true, true]);
  });

  test('leaves no mark of the other structure in its content', async () => {
    const { bytes } = await printed(CERTIFICATE);
    const forms = (await readFile(bytes)).streams('Form');
    expect(forms).toHaveLength(2);
    for (const form of forms) {
      expect(form.decode()).not.toMatch(/\b(BDC|BMC|EMC)\b/);
      expect(form.decode()).toContain('Tj');
      expect(form.dictionary).not.toMatch(/StructParent|Metadata|PieceInfo|Group/);
    }
  });

  test('gives the same bytes again', async () => {
    const [first, second] = [await printed(CERTIFICATE), await printed(CERTIFICATE)];
    expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
  });

  test('writes what several pages share once', async () => {
    const { bytes } = await printed(CERTIFICATE);
    const { objects } = await readFile(bytes);
    // Three faces of ours and three of the certificate.
    expect(objects.filter((object) => object.includes('/FontFile2'))).toHaveLength(6);
  });

  test.each(['encrypted.pdf', 'scripted.pdf', 'truncated.pdf', 'loom.jpg'])('never takes %s', async (name) => {
    await expect(printed(attachment(name))).rejects.toThrow('must pass inspection');
  });
});

describe('print() claims PDF/A and PDF/UA', () => {
  const claimsIn = async (bytes: Uint8Array): Promise<(string | undefined)[]> => {
    const { metadata } = await (await openFile(bytes)).getMetadata();
    return [metadata?.get('pdfaid:part') ?? undefined, metadata?.get('pdfuaid:part') ?? undefined];
  };

  test('with an annex that has no obstacles', async () => {
    const { bytes, claims } = await printed(CERTIFICATE);
    expect([claims, ...(await claimsIn(bytes))]).toEqual([true, '3', '1']);
  });

  test('and keeps every clause that is checked, with photographs and on both papers', async () => {
    const images = { a: attachment('loom-on-its-side.jpg'), b: attachment('connector-with-alpha.png') };
    const figures = Object.keys(images).map((source) => `<figure><img src="${source}" alt="Shown"></figure>`);
    const html = `<article id="photographs" lang="en"><h1>Photographs</h1>${figures.join('')}</article>`;
    const documents = [{ id: 'photographs', title: 'Photographs', html }, ...jobWith(CERTIFICATE).documents];
    for (const paper of PAPER_NAMES) {
      const { bytes } = await printed(CERTIFICATE, { documents, images, paper, mark: 'NOT RELEASED' });
      expect(await archivalDefects(bytes)).toEqual({});
    }
  });

  test('not with one that has', async () => {
    const { bytes, claims } = await printed(attachment('data-sheet-font-not-embedded.pdf'));
    expect([claims, ...(await claimsIn(bytes))]).toEqual([false, undefined, undefined]);
    expect(latin1(bytes)).not.toMatch(/pdfaid|pdfuaid/);
  });
});

interface Placed {
  /** Where the word “Here” stands on our page, and which way it runs. */
  at: [x: number, y: number];
  along: [x: number, y: number];
}

// Where the text of the foreign page has come to stand.
async function placeOf(given: OnePage): Promise<Placed> {
  const { bytes } = await printed(onePage(given));
  const content = await (await (await openFile(bytes)).getPage(2)).getTextContent();
  const item = content.items.find((each) => 'str' in each && each.str === 'Here');
  if (!item || !('transform' in item)) throw new Error('The word must be on the page');
  const [a, b, , , x, y] = item.transform as number[];
  const size = Math.hypot(a ?? 0, b ?? 0);
  const round = (value = 0): number => Math.round(value * 10) / 10 + 0;
  return { at: [round(x), round(y)], along: [round((a ?? 0) / size), round((b ?? 0) / size)] };
}

// The middle of the space between head and foot of A4.
const [MIDDLE_X, MIDDLE_Y] = [595.28 / 2, (841.89 - 50 + 51) / 2];

describe('print() places a foreign page', () => {
  const from = (x: number, y: number): [number, number] => [
    Math.round((MIDDLE_X + x) * 10) / 10,
    Math.round((MIDDLE_Y + y) * 10) / 10,
  ];
  test.each<[string, OnePage, Placed]>([
    ['as it is', {}, { at: from(50 - 200, 250 - 150), along: [1, 0] }],
    ['turned by 90°', { page: '/Rotate 90' }, { at: from(250 - 150, 200 - 50), along: [0, -1] }],
    ['turned by 180°', { page: '/Rotate -180' }, { at: from(200 - 50, 150 - 250), along: [-1, 0] }],
    ['turned by 270°', { page: '/Rotate 270' }, { at: from(150 - 250, 50 - 200), along: [0, 1] }],
    ['cropped', { page: '/CropBox[40 200 440 290]' }, { at: from(50 - 220, 250 - 245), along: [1, 0] }],
    ['in a larger unit', { page: '/UserUnit 1.25' }, { at: from(62.5 - 250, 312.5 - 187.5), along: [1, 0] }],
  ])('%s', async (_, given, expected) => {
    expect(await placeOf(given)).toEqual(expected);
  });

  test('makes it smaller where it must', async () => {
    const { at } = await placeOf({ page: '/MediaBox[0 0 4000 3000]' });
    const scale = (595.28 - 2 * (72 / 2.54)) / 4000;
    expect(at[0]).toBeCloseTo(MIDDLE_X + (50 - 2000) * scale, 0);
    expect(at[1]).toBeCloseTo(MIDDLE_Y + (250 - 1500) * scale, 0);
  });
});

const hexed = (data: Buffer): Buffer => Buffer.from(`${deflateSync(data).toString('hex')}>`);

describe('print() carries over what a page shows', () => {
  const formsOf = async (given: OnePage) => (await readFile((await printed(onePage(given))).bytes)).streams('Form');

  test('content packed in any way text may be', async () => {
    const content = 'BT /F1 9 Tf (By any filter) Tj ET';
    const hex = `${Buffer.from(content).toString('hex')}>`;
    const packed = latin1(deflateSync(Buffer.from(content)));
    const runs = `${String.fromCharCode(content.length - 1)}${content}\u0080`;
    // A table of nine-bit codes of single bytes, with an end, is what the simplest packer would write.
    const codes = [256, ...Buffer.from(content), 257].map((code) => code.toString(2).padStart(9, '0')).join('');
    const lzw = latin1(
      Uint8Array.from(codes.match(/.{1,8}/g) ?? [], (bits) => Number.parseInt(bits.padEnd(8, '0'), 2)),
    );
    for (const [filter, stream] of [
      ['ASCIIHexDecode', hex],
      ['FlateDecode', packed],
      ['RunLengthDecode', runs],
      ['LZWDecode', lzw],
    ] as const) {
      const forms = await formsOf({ page: '/Contents 6 0 R', objects: [streamOf(stream, `/Filter/${filter}`)] });
      expect(forms[0]?.decode().trim(), filter).toBe(content);
    }
  });

  test('a fax, of which readers are told to stop after its rows', async () => {
    // ITU-T T.6: a first row of sixteen black columns, in horizontal mode; in each other row both changes stand below those above it.
    const row = `001${'00110101'}${'0000010111'}`;
    const bits = `${row}${'11'.repeat(400)}`.match(/.{1,8}/g) ?? [];
    const fax = latin1(Uint8Array.from(bits, (each) => Number.parseInt(each.padEnd(8, '0'), 2)));
    const entries = '/Type/XObject/Subtype/Image/Width 16/Height 8/ColorSpace/DeviceGray/BitsPerComponent 1';
    const filter = '/Filter[/ASCIIHexDecode/CCITTFaxDecode]/DecodeParms[null<</K -1/Columns 16>>]';
    const paper = onePage({
      content: 'q 300 0 0 200 50 20 cm /I Do Q',
      resources: '/XObject<</I 6 0 R>>',
      objects: [streamOf(`${Buffer.from(fax, 'latin1').toString('hex')}>`, `${entries}${filter}`)],
    });
    const { bytes } = await printed(paper);
    const [image] = (await readFile(bytes)).streams('Image');
    expect(image?.dictionary).toMatch(/\/Filter \/CCITTFaxDecode/);
    expect(image?.dictionary).toMatch(/\/Rows 8/);
    expect(image?.dictionary).toMatch(/\/EndOfBlock false/);
    // Another reader sees a black box of 300 by 200 points, at 50 dots to 72.
    const { greys } = (await pagePictures(bytes))[1] ?? { greys: new Uint8Array() };
    const dark = greys.filter((grey) => grey < 2).length;
    expect(dark / ((300 * 200 * 50 * 50) / 72 / 72)).toBeCloseTo(1, 1);
  });

  test.each([
    ['left packed where it is simply deflated', '/FlateDecode', (data: Buffer) => deflateSync(data), 'FlateDecode'],
    ['named shortly, as careless writers do', '/Fl', (data: Buffer) => deflateSync(data), 'FlateDecode'],
    ['unpacked from digits, and left deflated', '[/ASCIIHexDecode/FlateDecode]', hexed, 'FlateDecode'],
    [
      'packed anew from runs',
      '/RunLengthDecode',
      (data: Buffer) => Buffer.concat([Uint8Array.of(data.length - 1), data]),
      'FlateDecode',
    ],
  ])('a picture, %s', async (_, filter, pack, kept) => {
    const data = Buffer.from('samples of a grey picture');
    const entries = `/Type/XObject/Subtype/Image/Width ${data.length}/Height 1/ColorSpace/DeviceGray/BitsPerComponent 8`;
    const { bytes } = await printed(
      onePage({
        content: '/I Do',
        resources: '/XObject<</I 6 0 R>>',
        objects: [streamOf(latin1(pack(data)), `${entries}/Filter ${filter}`)],
      }),
    );
    const [image] = (await readFile(bytes)).streams('Image');
    expect(image?.dictionary).toContain(`/Filter /${kept}`);
    expect(image?.decode()).toBe(data.toString());
  });

  test('nested forms, patterns and drawn letters, without their marks', async () => {
    const marked = '/P<</MCID 0>>BDC 0 0 5 5 re f EMC';
    const forms = await formsOf({
      content: '/X Do',
      resources: '/XObject<</X 6 0 R>>/Pattern<</P 7 0 R>>/Properties<</MC0 9 0 R>>',
      fonts:
        '/T3<</Type/Font/Subtype/Type3/FontBBox[0 0 9 9]/FontMatrix[1 0 0 1 0 0]/CharProcs<</OC 8 0 R>>/Encoding<</Differences[65/OC]>>/FirstChar 65/LastChar 65/Widths[9]>>',
      objects: [
        streamOf(marked, '/Type/XObject/Subtype/Form/BBox[0 0 9 9]/StructParents 4/OC 9 0 R/PieceInfo<<>>'),
        streamOf(marked, '/PatternType 1/PaintType 1/TilingType 1/BBox[0 0 9 9]/XStep 9/YStep 9'),
        streamOf(`9 0 d0 ${marked}`),
        '<</Type/OCG/Name(Layer)>>',
      ],
    });
    expect(forms).toHaveLength(2);
    const nested = forms.find(({ dictionary }) => dictionary.includes('[ 0 0 9 9 ]'));
    expect(nested?.decode().trim()).toBe('0 0 5 5 re f');
    expect(nested?.dictionary).not.toMatch(/StructParents|OC|PieceInfo/);
    // A form without resources of its own uses its page's.
    expect(nested?.dictionary).toContain('/Resources');
  });

  test('what annotations look like, at their place, but not the annotations', async () => {
    const widget = '<</Subtype/Widget/FT/Tx/V(88213)/Rect[100 100 200 140]/AP<</N 6 0 R>>>>';
    const hidden = '<</Subtype/Stamp/F 2/Rect[0 0 9 9]/AP<</N 6 0 R>>>>';
    const { bytes } = await printed(
      onePage({
        page: `/Annots[${widget}${hidden}<</Subtype/Link/Rect[0 0 9 9]>>]`,
        objects: [
          streamOf(
            '/Tx BMC BT /F1 10 Tf 2 5 Td (88213) Tj ET EMC',
            '/Subtype/Form/BBox[0 0 50 20]/Resources<</Font<</F1 5 0 R>>>>',
          ),
        ],
      }),
    );
    expect((await pageTexts(bytes))[1]).toContain('88213');
    const page = await (await openFile(bytes)).getPage(2);
    expect(await page.getAnnotations()).toEqual([]);
    const { items } = await page.getTextContent();
    const item = items.find((each) => 'str' in each && each.str === '88213');
    const transform = item && 'transform' in item ? (item.transform as number[]) : [];
    expect(transform[0]).toBeCloseTo(20, 1);
    expect(transform[4]).toBeCloseTo(MIDDLE_X - 200 + 104, 1);
    expect(transform[5]).toBeCloseTo(MIDDLE_Y - 150 + 110, 1);
  });
});
