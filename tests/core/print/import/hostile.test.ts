import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inspectAttachment, print } from '../../../../worker/core/print/index.ts';
import { jobOf } from '../sample-job.ts';
import { attachment, type OnePage, onePage, streamOf } from './pdf-of.ts';
import { readFile } from './read-file.ts';

const FILES = [
  'release-certificate.pdf',
  'data-sheet-font-not-embedded.pdf',
  'scripted.pdf',
  'encrypted.pdf',
  'truncated.pdf',
  'loom-on-its-side.jpg',
  'connector-with-alpha.png',
].map(attachment);

interface Change {
  at: number;
  /** Null replaces as much as is inserted. */
  remove: number | null;
  insert: Uint8Array;
}

// Many changes keep the length, or the table of objects would lead nowhere and nothing else be reached. Places are shares of the length, so that one change fits every file; most are small, where structure is hit.
const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, fc.nat(4), fc.nat(3000)),
  insert: fc.oneof(
    fc.uint8Array({ maxLength: 4 }),
    fc
      .constantFrom(
        '1 0 R',
        '<<',
        '>>',
        '[',
        '(',
        '/Prev 9',
        '/Length 999999999',
        'stream\n',
        'xref',
        '-1',
        '0 0 obj',
        '/Kids[2 0 R]',
      )
      .map((text) => new Uint8Array(Buffer.from(text))),
  ),
});

function changed(bytes: Uint8Array, changes: readonly Change[]): Uint8Array {
  return changes.reduce<Uint8Array>((now, { at, remove, insert }) => {
    const start = Math.floor(at * now.length);
    return new Uint8Array(
      Buffer.concat([now.subarray(0, start), insert, now.subarray(start + (remove ?? insert.length))]),
    );
  }, bytes);
}

/** Prints a file that passed inspection, and reads what came of it as others do. */
async function expectPrinted(bytes: Uint8Array, isPaper: boolean): Promise<void> {
  const html = isPaper ? '' : '<figure><img src="a" alt="Shown"></figure>';
  const article = `<article id="annex" lang="en"><h1>Annex</h1>${html}</article>`;
  const appended = isPaper ? { appended: { bytes, title: 'Paper' } } : {};
  const documents = [{ id: 'annex', title: 'Annex', html: article, ...appended }];
  const printed = await print(jobOf('', { documents, ...(!isPaper && { images: { a: bytes } }) }));
  const { contents, objects, streams } = await readFile(printed.bytes);
  const forms = streams('Form').flatMap((form) => [form.dictionary, form.decode()]);
  expect(contents).toHaveLength(printed.pages);
  expect([...contents, ...objects, ...forms].join('\n')).not.toMatch(/NaN|Infinity|\de[+-]\d/);
}

test('inspectAttachment() gives a verdict on any file, and print() prints what passes', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...FILES),
      fc.array(change, { minLength: 1, maxLength: 4 }),
      async (file, changes) => {
        const bytes = changed(file, changes);
        const inspected = await inspectAttachment(bytes);
        if (inspected.ok) await expectPrinted(bytes, inspected.kind === 'pdf');
        else expect(inspected.detail).not.toBe('');
      },
    ),
    { numRuns: 1500 },
  );
});

test('inspectAttachment() gives a verdict on any bytes behind a header', async () => {
  const header = fc
    .constantFrom('%PDF-1.7\n', '\u0089PNG\r\n\u001a\n', '\u00ff\u00d8\u00ff')
    .map((text) => Buffer.from(text, 'latin1'));
  await fc.assert(
    fc.asyncProperty(header, fc.uint8Array({ maxLength: 400 }), async (start, rest) => {
      expect(await inspectAttachment(new Uint8Array(Buffer.concat([start, rest])))).toMatchObject({ ok: false });
    }),
  );
});

const HUGE = `1${'0'.repeat(400)}`;
const LARGE = `1${'0'.repeat(30)}`;

// Figures that no paper has, wherever a page may have figures.
test.each<[string, OnePage]>([
  ['a page in a huge unit', { page: `/UserUnit ${HUGE}` }],
  ['a page in a large unit', { page: `/UserUnit ${LARGE}` }],
  ['a page in a tiny unit', { page: '/UserUnit .000000000000000000000000000001' }],
  ['a page of huge size', { page: `/MediaBox[0 0 ${HUGE} ${HUGE}]` }],
  ['a page far away', { page: `/MediaBox[${LARGE} ${LARGE} ${LARGE} ${LARGE}]` }],
  ['a page turned very often', { page: `/Rotate ${HUGE}` }],
  ['a page turned often', { page: `/Rotate ${LARGE}` }],
  [
    'a stamp of huge size',
    {
      page: `/Annots[<</Subtype/Stamp/Rect[0 0 ${HUGE} ${LARGE}]/AP<</N 6 0 R>>>>]`,
      objects: [streamOf('0 0 5 5 re f', '/Subtype/Form/BBox[0 0 .0000001 9]')],
    },
  ],
  [
    'a stamp in a huge plane',
    {
      page: '/Annots[<</Subtype/Stamp/Rect[0 0 9 9]/AP<</N 6 0 R>>>>]',
      objects: [streamOf('0 0 5 5 re f', `/Subtype/Form/BBox[0 0 9 9]/Matrix[${HUGE} 0 0 ${LARGE} 0 0]`)],
    },
  ],
  [
    'forms and states of huge figures',
    {
      content: '/X Do /G gs',
      resources: `/XObject<</X 6 0 R>>/ExtGState<</G<</LW ${HUGE}/ML -${LARGE}/FL .00000000000000000000001>>>>`,
      objects: [
        streamOf(
          '0 0 5 5 re f',
          `/Subtype/Form/BBox[-${HUGE} -${LARGE} ${HUGE} ${LARGE}]/Matrix[1 0 0 1 ${HUGE} ${LARGE}]`,
        ),
      ],
    },
  ],
  [
    'a picture of no number',
    { resources: '/XObject<</X 6 0 R>>', objects: [streamOf('', `/Subtype/Image/Width ${HUGE}/Height 1`)] },
  ],
])('print() prints what passes inspection: %s', async (_, given) => {
  const bytes = onePage(given);
  const inspected = await inspectAttachment(bytes);
  if (inspected.ok) await expectPrinted(bytes, true);
  else expect(inspected.detail).not.toBe('');
});
