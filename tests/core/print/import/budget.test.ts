import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../../worker/core/limits.ts';
import { Budget, type Work } from '../../../../worker/core/print/bytes/budget.ts';
import { codeCutterOf } from '../../../../worker/core/print/import/font-codes.ts';
import { openPdf } from '../../../../worker/core/print/import/pdf-file.ts';
import { readAnnex } from '../../../../worker/core/print/import/read-annex.ts';
import { inspectAttachment } from '../../../../worker/core/print/index.ts';
import { nameObject } from '../../../../worker/core/print/pdf-object.ts';
import { isPicture, readPicture } from '../../../../worker/core/print/picture/read-picture.ts';
import { orRefused } from '../../../../worker/core/print/refusal.ts';
import { saidFault } from '../../../../worker/core/text/faults.ts';
import { inEnglish } from '../../../../worker/core/text/formatter.ts';
import { budgetOf } from '../budget-of.ts';
import { HOSTILE_FILES } from './hostile-files.ts';
import { attachment, latin1, type OnePage, onePage, pdfOf, streamOf } from './pdf-of.ts';

const BOUNDS: Readonly<Record<Work, number>> = {
  unpackedBytes: LIMITS.fileUnpackedBytes,
  passedBytes: LIMITS.filePassedBytes,
  objects: LIMITS.fileObjects,
  tokens: LIMITS.fileTokens,
  draws: LIMITS.fileDraws,
  pixels: LIMITS.filePixels,
};

/** Reads a file as its inspection does, charged to the given budget. */
function refusalOf(bytes: Uint8Array, budget = new Budget()): string {
  const answer = orRefused(() =>
    isPicture(bytes) ? readPicture(bytes, true, budget) : readAnnex(bytes, { budget, verify: true }),
  );
  return 'refusal' in answer ? `${answer.refusal}: ${inEnglish(saidFault(answer.detail))}` : 'none';
}

const packed = (bytes: Uint8Array): string => latin1(deflateSync(bytes, { level: 9 }));

describe('an inspection refuses what costs more than a file may', () => {
  const MAX = 'than a paper needs';
  test.each<[name: string, refusal: string, over: Work | null]>([
    ['blanks as digits, twenty times over', 'it unpacks to more than 16 MB', 'unpackedBytes'],
    ['millions of marks', 'it unpacks to more than 16 MB', 'unpackedBytes'],
    ['zeros as text', 'it unpacks to more than 16 MB', 'unpackedBytes'],
    ['runs of two bytes', 'it unpacks to more than 16 MB', 'unpackedBytes'],
    ['millions of operators', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['millions of empty strings', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['one content on sixty pages', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['a string cut by a hundred code spaces', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['a string on sixty pages', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['blanks on sixty pages', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['millions of strings before an operator', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['millions of texts of a font', `its pages are drawn in more steps ${MAX}`, 'tokens'],
    ['modes of one list in thousands of states', `it holds more objects ${MAX}`, 'objects'],
    ['names of one list in thousands of fonts', `it holds more objects ${MAX}`, 'objects'],
    ['forms drawn ten billion times', `its pages draw the same over and over, more often ${MAX}`, 'draws'],
    ['letters drawn ten billion times', `its pages draw the same over and over, more often ${MAX}`, 'draws'],
    ['masks within masks', `its pages draw the same over and over, more often ${MAX}`, 'draws'],
    ['a picture shown a million times', 'its pages show more than 1500 million pixels', 'pixels'],
    ['a table of millions', `it holds more objects ${MAX}`, 'objects'],
    [
      'a font that unpacks to a billion',
      'its pictures and fonts take more work to unpack than 400 MB of them may',
      'passedBytes',
    ],
    [
      'a PNG of millions of rows',
      'its pictures and fonts take more work to unpack than 400 MB of them may',
      'passedBytes',
    ],
    ['a picture of a pixel that unpacks to a hundred million', 'a picture in it unpacks to more than its size', null],
    ['a pattern without an end', 'a pattern in it stands side by side more often than can be drawn', null],
    ['a pattern without a step', 'a pattern in it stands side by side more often than can be drawn', null],
    ['a photograph of four billion pixels behind a small one', 'a picture in it is not of the size that it says', null],
    ['a photograph of other sizes', 'a picture in it is not of the size that it says', null],
    ['a photograph in thousands of scans', 'the picture is coded in more than 100 passes', null],
    ['a photograph that is none', 'a picture in it is no JPEG, though it says so', null],
    ['forms that draw themselves', 'its pages draw themselves, or too much within one another', null],
    ['a list of millions within a picture', 'a picture in it is not to be understood', null],
    ['a number of a million digits that is none', 'a number is none', null],
    ['streams that end in the same blanks', 'parts of it lie over one another', null],
    ['a chain of objects', 'objects are nested too deeply', null],
    ['a tree of pages as deep as it is long', 'objects are nested too deeply', null],
  ])('%s', (name, refusal, over) => {
    const budget = new Budget();
    expect(refusalOf(HOSTILE_FILES[name]?.() ?? new Uint8Array(), budget)).toContain(refusal);
    const exceeded = Object.entries(BOUNDS).filter(([work, most]) => budget.spent[work as Work] > most);
    expect(exceeded.map(([work]) => work)).toEqual(over === null ? [] : [over]);
  });

  test.each([
    ['a picture by JBIG2', 'JBIG2'],
    ['a picture by JPEG 2000', 'JPEG 2000'],
  ])('%s, for it cannot be counted', (name, packing) => {
    expect(refusalOf(HOSTILE_FILES[name]?.() ?? new Uint8Array())).toBe(
      `unknown-type: a picture in it is packed by ${packing}, and how much that unpacks to cannot be counted; save it with JPEG or plain pictures`,
    );
  });
});

/** What inspecting a file is charged. */
function spentOn(bytes: Uint8Array): Record<Work, number> {
  const budget = budgetOf({});
  expect(refusalOf(bytes, budget)).toBe('none');
  return budget.spent;
}

describe('an inspection charges', () => {
  const text = Buffer.from('0 0 1 1 re f '.repeat(1000));
  const content = (object: string, page = '/Contents 6 0 R'): OnePage => ({ page, objects: [object] });

  test('every filter for what it gives, and those that read text for what they are given', () => {
    const hex = Buffer.from(`${text.toString('hex')}>`);
    const filters = '/Filter[/FlateDecode/ASCIIHexDecode]';
    const { unpackedBytes } = spentOn(onePage(content(streamOf(packed(hex), filters))));
    expect(unpackedBytes).toBe(hex.length + (hex.length - 1) + text.length);
  });

  test('a stream once, however often it is named', () => {
    const stream = streamOf(packed(text), '/Filter/FlateDecode');
    const once = spentOn(onePage(content(stream)));
    const often = spentOn(onePage(content(stream, `/Contents[${'6 0 R '.repeat(20)}]`)));
    expect(once.unpackedBytes).toBe(text.length);
    // Joined they take as many bytes again, with a line feed after each.
    expect(often.unpackedBytes).toBe(text.length + 20 * (text.length + 1));
  });

  test('the steps of a form for each time that it is drawn', () => {
    const form = (operators: number): string => streamOf('n '.repeat(operators), '/Subtype/Form/BBox[0 0 9 9]');
    const drawn = (times: number): Uint8Array =>
      onePage({ content: '/X Do '.repeat(times), resources: '/XObject<</X 6 0 R>>', objects: [form(50)] });
    const [once, often] = [spentOn(drawn(1)), spentOn(drawn(100))];
    expect(often.draws - once.draws).toBe(99 * (1 + 1 + 50));
  });

  test('pixels for each time that a picture is shown, its mask included', () => {
    const grey = '/Type/XObject/Subtype/Image/ColorSpace/DeviceGray/BitsPerComponent 8';
    const { pixels } = spentOn(
      onePage({
        content: '/I Do /I Do',
        resources: '/XObject<</I 6 0 R>>',
        objects: [
          streamOf('x'.repeat(600), `${grey}/Width 30/Height 20/SMask 7 0 R`),
          streamOf('x'.repeat(100), `${grey}/Width 10/Height 10`),
        ],
      }),
    );
    expect(pixels).toBe(2 * (600 + 100));
  });
});

describe('a file of long lists is read as far as it is needed', () => {
  // Each took minutes where all of it was gone through for every use.
  test.each(['numbers of one list in thousands of stamps', 'text of millions of letters for each code'])(
    '%s',
    (name) => {
      expect(refusalOf(HOSTILE_FILES[name]?.() ?? new Uint8Array())).toBe('none');
    },
  );

  test.each([
    ['bytes', new Map(), 'ab'],
    ['pairs', new Map([['Encoding', nameObject('Identity-H')]]), 'abcd'],
  ])('the codes of a string are cut no further than they are wanted: %s', (_, entries, string) => {
    const font = new Map([...entries, ['Subtype', nameObject(entries.size > 0 ? 'Type0' : 'Type1')]]);
    const file = openPdf(onePage({}), new Budget());
    const taken: number[] = [];
    codeCutterOf(font, file)?.(string, (code) => taken.push(code) < 1);
    expect(taken).toHaveLength(1);
  });
});

describe('ordinary papers are taken', () => {
  test('text of two pages for less than a twentieth of each bound', () => {
    const spent = spentOn(attachment('release-certificate.pdf'));
    for (const [work, most] of Object.entries(BOUNDS)) expect(spent[work as Work], work).toBeLessThan(most / 20);
  });

  // Invented scans: blank pages unpack to as much as written ones.
  test.each([
    ['in black and white at 300 dpi', 2480, 3508, 1, 'DeviceGray'],
    ['in grey at 200 dpi', 1654, 2339, 8, 'DeviceGray'],
    ['in colour at 150 dpi', 1240, 1754, 8, 'DeviceRGB'],
  ] as const)('sixty pages scanned %s', (_, columns, rows, bits, space) => {
    const rowBytes = Math.ceil((columns * bits * (space === 'DeviceRGB' ? 3 : 1)) / 8);
    const samples = packed(new Uint8Array(rowBytes * rows));
    const entries = `/Type/XObject/Subtype/Image/Width ${columns}/Height ${rows}/ColorSpace/${space}/BitsPerComponent ${bits}/Filter/FlateDecode`;
    const numbers = Array.from({ length: 60 }, (_each, i) => i);
    const page = (i: number): string =>
      `<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Contents 3 0 R/Resources<</XObject<</I ${64 + i} 0 R>>>>>>`;
    const scan = pdfOf([
      '<</Type/Catalog/Pages 2 0 R>>',
      `<</Type/Pages/Count 60/Kids[${numbers.map((i) => `${i + 4} 0 R`).join(' ')}]>>`,
      streamOf('q 595 0 0 842 0 0 cm /I Do Q'),
      ...numbers.map(page),
      ...numbers.map(() => streamOf(samples, entries)),
    ]);
    const budget = new Budget();
    expect(refusalOf(scan, budget)).toBe('none');
    expect(budget.spent.passedBytes).toBe(60 * rowBytes * rows);
    expect(budget.spent.pixels).toBe(60 * columns * rows);
  });

  test('a fax of as many rows as it says', async () => {
    const inspected = await inspectAttachment(HOSTILE_FILES['a fax without an end']?.() ?? new Uint8Array());
    expect(inspected).toMatchObject({ ok: true, pages: 1 });
  });
});
