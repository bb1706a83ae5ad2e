import { readFileSync } from 'node:fs';
import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, PDFRawStream, PDFRef } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { inspectAttachment, type Printed, print } from '../../../../worker/core/print/index.ts';
import { saidFault } from '../../../../worker/core/text/faults.ts';
import { inEnglish } from '../../../../worker/core/text/formatter.ts';
import { jobOf } from '../sample-job.ts';
import { HOSTILE_FILES } from './hostile-files.ts';
import { latin1, type OnePage, onePage, streamOf } from './pdf-of.ts';
import { readFile } from './read-file.ts';

/** A paper as another program wrote it; `fixtures/papers/make.sh` says how. */
const paper = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(`${import.meta.dirname}/../../../../fixtures/papers/${name}.pdf`));

const A1B = paper('a1b-composite');
const A2B = paper('a2b-simple');

async function obstaclesOf(bytes: Uint8Array): Promise<string[]> {
  const inspected = await inspectAttachment(bytes);
  if (!inspected.ok || inspected.kind !== 'pdf') throw new Error(JSON.stringify(inspected));
  return inspected.obstacles.map((fault) => inEnglish(saidFault(fault)));
}

function printed(...papers: readonly Uint8Array[]): Promise<Printed> {
  const documents = papers.map((bytes, i) => {
    const html = `<article id="annex-${i}" lang="en"><h1>Annex</h1></article>`;
    return { id: `annex-${i}`, title: `Annex ${i}`, html, appended: { bytes, title: 'Paper' } };
  });
  return print(jobOf('', { documents }));
}

const keyed = (key: string) => PDFName.of(key);

/** A paper with its ToUnicode maps rewritten, as text. */
async function withMaps(bytes: Uint8Array, change: (map: string) => string): Promise<Uint8Array> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const { context } = document;
  for (const [, object] of context.enumerateIndirectObjects()) {
    const ref = object instanceof PDFDict ? object.get(keyed('ToUnicode')) : undefined;
    const map = context.lookup(ref);
    if (!(ref instanceof PDFRef && map instanceof PDFRawStream)) continue;
    context.assign(ref, context.flateStream(change(latin1(decodePDFRawStream(map).decode()))));
  }
  return document.save({ updateFieldAppearances: false });
}

describe('a paper of another program', () => {
  test.each([
    ['PDF/A-1b of composite fonts', A1B],
    ['PDF/A-2b of a simple font', A2B],
  ])('that is %s keeps no claim away, and its lists of glyphs are left behind', async (_, bytes) => {
    const lists = /\/CIDSet|\/CharSet/;
    expect(latin1(bytes) + (await readFile(bytes)).objects.join()).toMatch(lists);
    expect(await obstaclesOf(bytes)).toEqual([]);
    const { bytes: pack, claims } = await printed(bytes);
    expect(claims).toBe(true);
    expect((await readFile(pack)).objects.join()).not.toMatch(lists);
  });

  const LEVEL = 'it is PDF/A of level b, and level a or u is needed';
  const PRIVATE = 'shows characters whose text is private to it, such as marks of lists';
  const NONE = 'shows characters that it says are none';
  const UNSAID = 'shows characters without saying which text they are';

  // The text of the last letter that is listed, as UTF-16.
  const lastText = (text: string) => (map: string) =>
    map.replace(/<[0-9a-f]{4}>(?![\s\S]*<[0-9a-f]{4}>)/i, `<${text}>`);
  test.each<[string, (map: string) => string, string]>([
    ['in the private area', lastText('F0B7'), PRIVATE],
    ['at the beginning of it', lastText('E000'), PRIVATE],
    ['at its end', lastText('F8FF'), PRIVATE],
    ['in plane 15', lastText('DB80DC00'), PRIVATE],
    ['in plane 16', lastText('DBFFDFFD'), PRIVATE],
    ['that is zero', lastText('0000'), NONE],
    ['that is a byte order mark', lastText('FEFF'), NONE],
    ['that is one turned round', lastText('FFFE'), NONE],
    ['that is nothing', lastText(''), UNSAID],
    ['left out', (map) => map.replace(/beginbf(char|range)[\s\S]*?endbf\1/g, ''), UNSAID],
  ])('with a text %s keeps it away', async (_, change, words) => {
    const bytes = await withMaps(A1B, change);
    const obstacles = await obstaclesOf(bytes);
    expect(obstacles).toContain(LEVEL);
    expect(obstacles.filter((obstacle) => obstacle !== LEVEL)).not.toEqual([]);
    for (const obstacle of obstacles.filter((each) => each !== LEVEL)) expect(obstacle).toContain(words);
    expect((await printed(bytes)).claims).toBe(false);
  });

  test('with a private text of a code that is never shown does not', async () => {
    const more = '1 beginbfchar\n<7FF0> <E000>\nendbfchar\nendcmap';
    expect(await obstaclesOf(await withMaps(A1B, (map) => map.replace('endcmap', more)))).toEqual([]);
  });
});

const TABLE_OF = (blocks: string): string => streamOf(`begincmap ${blocks} endcmap`);
const LETTERS = TABLE_OF('1 beginbfrange <41> <5a> <0041> endbfrange 1 beginbfchar <61> <E001> endbfchar');
const PAIRS = TABLE_OF(
  '2 beginbfrange <0041> <005a> <0041> <0100> <0101> [<0078> <F8FF>] endbfrange 1 beginbfchar <00000102> <0079> endbfchar',
);
const SPACES = 'begincodespacerange <00> <7f> <8000> <ffff> endcodespacerange';

const simple = (entries: string): string =>
  `<</Type/Font/Subtype/TrueType/BaseFont/ABCDEF+Face/FontDescriptor<</FontFile2 4 0 R>>${entries}>>`;
const composite = (encoding: string): string =>
  `<</Type/Font/Subtype/Type0/BaseFont/Face/Encoding ${encoding}/ToUnicode 6 0 R/DescendantFonts[<</Type/Font/Subtype/CIDFontType2/CIDToGIDMap/Identity/FontDescriptor<</FontFile2 4 0 R>>>>]>>`;

/** A page that shows strings in a font. */
const shown = (font: string, strings: string, map: string, more: readonly string[] = []): OnePage => ({
  content: `BT /G 9 Tf ${strings} Tj ET`,
  fonts: `/G ${font}`,
  objects: [map, ...more],
});

describe('the codes that are shown are read by the encoding of their font', () => {
  const UNSAID = 'the font Face shows characters without saying which text they are';
  const PRIVATE = 'the font Face shows characters whose text is private to it, such as marks of lists';
  const OUTSIDE =
    'the strings of the font Face cannot be read: the table of their codes is not in the file, or does not fit them';
  const WIN = '/Encoding/WinAnsiEncoding';
  const DIFFERING = '/Encoding<</BaseEncoding/WinAnsiEncoding/Differences[65/A/B 97/a]>>/ToUnicode 6 0 R';
  const cut = TABLE_OF(SPACES);
  const form = (content: string, entries = ''): string => streamOf(content, `/Subtype/Form/BBox[0 0 9 9]${entries}`);
  const FONT = simple('/ToUnicode 6 0 R');

  test.each<[string, OnePage, string[]]>([
    ['a plain encoding', shown(simple(WIN), '(Aa\\344)', LETTERS), []],
    ['a plain encoding, and a code that it lacks', shown(simple(WIN), '(A\\201)', LETTERS), [UNSAID]],
    ['a plain encoding, and a control', shown(simple('/Encoding/MacRomanEncoding'), '<0a>', LETTERS), [UNSAID]],
    ['a map', shown(FONT, '(ABZ)', LETTERS), []],
    ['a map that lacks a code', shown(FONT, '(ABb)', LETTERS), [UNSAID]],
    ['a map with a private text', shown(FONT, '(Aa)', LETTERS), [PRIVATE]],
    ['a map that lacks what a plain encoding has', shown(simple(`${WIN}/ToUnicode 6 0 R`), '(Ab)', LETTERS), []],
    ['a map that lacks a code that differs', shown(simple(DIFFERING), '(a)', TABLE_OF('')), [UNSAID]],
    ['a map, and differences that are not shown', shown(simple(DIFFERING), '(b)', TABLE_OF('')), []],
    ['pairs of bytes', shown(composite('/Identity-H'), '<00410100>', PAIRS), []],
    ['pairs of bytes upright', shown(composite('/Identity-V'), '<0041>', PAIRS), []],
    ['pairs of bytes, the second of a list', shown(composite('/Identity-H'), '<00410101>', PAIRS), [PRIVATE]],
    ['pairs of bytes that the map lacks', shown(composite('/Identity-H'), '<0042 0200>', PAIRS), [UNSAID]],
    ['half a pair', shown(composite('/Identity-H'), '<004100>', PAIRS), [OUTSIDE]],
    ['a table in the file', shown(composite('7 0 R'), '<4141>', PAIRS, [cut]), []],
    ['a table in the file that cuts in two ways', shown(composite('7 0 R'), '<418041>', PAIRS, [cut]), [UNSAID]],
    ['a table in the file that cuts nothing', shown(composite('7 0 R'), '<41>', PAIRS, [TABLE_OF('')]), [OUTSIDE]],
    ['a table outside the file', shown(composite('/UniGB-UCS2-H'), '<0041>', PAIRS), [OUTSIDE]],
    ['every operator', shown(FONT, `(A) ' 1 2 (A) " [(A)-20<62>] TJ (A)`, LETTERS), [UNSAID]],
    ['escapes and line ends', shown(FONT, '(\\101\\\nB)', LETTERS), []],
    ['a font that came back', shown(FONT, '(A) Tj q /F1 9 Tf (b) Tj Q (A)', LETTERS), []],
    ['a font that came back, and what it lacks', shown(FONT, '(A) Tj q /F1 9 Tf Q (b)', LETTERS), [UNSAID]],
    [
      'a graphics state',
      {
        content: 'BT /S gs (b) Tj ET',
        resources: '/ExtGState<</S<</Font[7 0 R 9]>>>>',
        objects: [LETTERS, FONT],
      },
      [UNSAID],
    ],
    [
      'a form',
      {
        content: '/X Do',
        resources: '/XObject<</X 7 0 R>>',
        objects: [LETTERS, form('BT /G 9 Tf (b) Tj ET', '/Resources<</Font<</G 8 0 R>>>>'), FONT],
      },
      [UNSAID],
    ],
    [
      'a form that uses its page',
      {
        content: '/X Do',
        resources: '/XObject<</X 7 0 R>>',
        fonts: '/G 8 0 R',
        objects: [LETTERS, form('BT /G 9 Tf (b) Tj ET'), FONT],
      },
      [UNSAID],
    ],
    [
      'the look of a stamp',
      {
        page: '/Annots[<</Subtype/Stamp/Rect[0 0 9 9]/AP<</N 7 0 R>>>>]',
        objects: [LETTERS, form('BT /G 9 Tf (b) Tj ET', '/Resources<</Font<</G 8 0 R>>>>'), FONT],
      },
      [UNSAID],
    ],
  ])('%s', async (_, given, expected) => {
    const obstacles = await obstaclesOf(onePage(given));
    expect(obstacles.filter((obstacle) => obstacle.includes('Face'))).toEqual(expected);
  });

  test('text in a font that nobody chose', async () => {
    const given = { content: '/X Do', resources: '/XObject<</X 6 0 R>>', objects: [form('BT (b) Tj ET')] };
    expect(await obstaclesOf(onePage(given))).toContain('it shows text without a font');
  });
});

describe('inks of one name', () => {
  const MIXED = 'it mixes the ink Gold in more than one way';
  const gold = (alternate: string, tint: string): string => `[/Separation/Gold/${alternate} ${tint}]`;
  const spaces = (first: string, second: string): OnePage => ({
    resources: `/ColorSpace<</A ${first}/B ${second}>>`,
    objects: [
      '<</FunctionType 2/Domain[0 1]/N 1/C0[1 1 1]/C1[.8 .6 0]>>',
      '<</Domain[0 1]/FunctionType 2/N 1/C0[1 1 1]/C1[.8 .6 0]>>',
      '<</FunctionType 2/Domain[0 1]/N 1/C0[1 1 1]/C1[.9 .6 0]>>',
      streamOf('{}', '/FunctionType 4/Domain[0 1]/Range[0 1 0 1 0 1]'),
      streamOf('{ }', '/FunctionType 4/Domain[0 1]/Range[0 1 0 1 0 1]'),
    ],
  });
  test.each<[string, OnePage, boolean]>([
    ['of one object', spaces(gold('DeviceRGB', '6 0 R'), gold('DeviceRGB', '6 0 R')), false],
    ['of objects that are alike', spaces(gold('DeviceRGB', '6 0 R'), gold('DeviceRGB', '7 0 R')), false],
    ['of another tint', spaces(gold('DeviceRGB', '6 0 R'), gold('DeviceRGB', '8 0 R')), true],
    ['of another alternate', spaces(gold('DeviceRGB', '6 0 R'), gold('CalRGB', '6 0 R')), true],
    ['of another calculation', spaces(gold('DeviceRGB', '9 0 R'), gold('DeviceRGB', '10 0 R')), true],
    [
      'among several inks',
      spaces(
        gold('DeviceRGB', '6 0 R'),
        `[/DeviceN[/Gold]/DeviceRGB 6 0 R<</Colorants<</Gold ${gold('DeviceRGB', '8 0 R')}>>>>]`,
      ),
      true,
    ],
  ])('in one paper, %s', async (_, given, isMixed) => {
    expect((await obstaclesOf(onePage(given))).includes(MIXED)).toBe(isMixed);
  });

  test('are named with what is known of a paper, so that papers can be held against one another', async () => {
    const known = async (name: string): Promise<Record<string, string>> => {
      const inspected = await inspectAttachment(HOSTILE_FILES[name]?.() ?? new Uint8Array());
      return (inspected.ok && inspected.kind === 'pdf' && inspected.inks) || {};
    };
    const [one, other] = [await known('an ink'), await known('an ink of the same name')];
    expect([Object.keys(one), Object.keys(other)]).toEqual([['Gold'], ['Gold']]);
    expect(one.Gold).not.toBe(other.Gold);
    expect(await obstaclesOf(HOSTILE_FILES['seven inks']?.() ?? new Uint8Array())).toContain(
      'it names more than 6 inks',
    );
  });

  test('in two papers that each keep every claim, of another tint', async () => {
    const withInk = async (red: number): Promise<Uint8Array> => {
      const document = await PDFDocument.load(A2B, { updateMetadata: false });
      const tint = { FunctionType: 2, Domain: [0, 1], N: 1, C0: [1, 1, 1], C1: [red, 0.6, 0] };
      const space = document.context.obj(['Separation', 'Gold', 'DeviceRGB', tint]);
      document
        .getPage(0)
        .node.Resources()
        ?.set(keyed('ColorSpace'), document.context.obj({ C: space }));
      return document.save();
    };
    const [one, other] = [await withInk(0.8), await withInk(0.9)];
    for (const bytes of [one, other]) expect((await printed(bytes)).claims).toBe(true);
    expect((await printed(one, await withInk(0.8))).claims).toBe(true);
    expect((await printed(one, other)).claims).toBe(false);
  });
});
