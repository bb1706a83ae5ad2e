import { afterEach, expect, test, vi } from 'vitest';
import { type PrintJob, print } from '../../../worker/core/print/index.ts';
import { openFile, pageTexts } from './read-back.ts';
import { jobOf, paragraphs, tableOf } from './sample-job.ts';

const page = (id: string, html: string): PrintJob['documents'][number] => ({
  id,
  title: `Title of ${id}`,
  html: `<article id="${id}" lang="en"><h1>Heading of ${id}</h1>${html}</article>`,
});

afterEach(() => {
  vi.useRealTimers();
});

test('print() starts every document on a new page and numbers the pages', async () => {
  const job = jobOf('', { documents: [page('a', paragraphs(30)), page('b', '<p>Short.</p>')] });
  const printed = await print(job);
  const texts = await pageTexts(printed.bytes);
  expect(printed.startPage).toEqual({ a: 1, b: printed.pages });
  expect(texts).toHaveLength(printed.pages);
  expect(texts.at(-1)).toContain('Heading of b');
  expect(texts.map((text, i) => text.includes(`page ${i + 1} of ${printed.pages}`))).not.toContain(false);
});

test('print() gives the same bytes whatever the clock says', async () => {
  vi.useFakeTimers({ toFake: ['Date'] });
  const job = jobOf(`${tableOf(80)}<p>Text</p>`, {
    attachments: [
      {
        name: 'record.json',
        bytes: new Uint8Array([123, 125]),
        mediaType: 'application/json',
        description: 'Record',
        relationship: 'Source',
      },
    ],
  });
  vi.setSystemTime('2026-01-01T00:00:00Z');
  const first = await print(job);
  vi.setSystemTime('2031-07-09T12:34:56Z');
  await print(jobOf('<p>Another job in between.</p>'));
  const second = await print(job);
  expect(Buffer.from(second.bytes).equals(Buffer.from(first.bytes))).toBe(true);
});

test('print() sets sheets of ISO 216 and ANSI Y14.1', async () => {
  for (const [paper, size] of [
    ['A4', [595.28, 841.89]],
    ['Letter', [612, 792]],
  ] as const) {
    const { bytes } = await print(jobOf('<p>Text</p>', { paper }));
    const { view } = await (await openFile(bytes)).getPage(1);
    expect(view).toEqual([0, 0, ...size]);
  }
});

test('print() shows the mark and its words on every page', async () => {
  const { bytes } = await print(jobOf(paragraphs(40), { mark: 'NOT RELEASED' }));
  const texts = await pageTexts(bytes);
  expect(texts.length).toBeGreaterThan(1);
  for (const text of texts) expect(text.match(/NOT RELEASED/g)).toHaveLength(2);
});

test('print() shows no mark where none is asked for', async () => {
  const texts = await pageTexts((await print(jobOf('<p>Text</p>'))).bytes);
  expect(texts[0]).not.toContain('RELEASED');
});

test('print() makes bookmarks of first and second level headings', async () => {
  const { bytes } = await print(jobOf('<h2>Second</h2><p>Text</p><h3>Third</h3><p>Text</p><h2>Other</h2><p>Text</p>'));
  const outline = await (await openFile(bytes)).getOutline();
  expect(outline.map((entry) => [entry.title, entry.items.map((item: { title: string }) => item.title)])).toEqual([
    ['One', ['Second', 'Other']],
  ]);
});

test('print() attaches files as they are', async () => {
  const attachment = {
    name: 'Prüfung.json',
    bytes: new TextEncoder().encode('{"mass":1}'),
    mediaType: 'application/json',
    description: 'The record',
    relationship: 'Source',
  } as const;
  const { bytes } = await print(jobOf('<p>Text</p>', { attachments: [attachment] }));
  const file = await openFile(bytes);
  const [[id, found] = []] = (await file.getAttachments()) ?? [];
  expect(found).toMatchObject({ filename: 'Prüfung.json', description: 'The record' });
  const content = await file.getAttachmentContent(id ?? '');
  expect(content).toEqual(attachment.bytes);
});

test('print() links to documents and to elements within them', async () => {
  const documents = [
    page(
      'a',
      '<p>See <a href="#b">the other</a> and <a href="#t">the table</a>, page <span data-page-of="b"></span>.</p>',
    ),
    page('b', `${paragraphs(20)}<section id="t">${tableOf(3)}</section>`),
  ];
  const { bytes, startPage } = await print(jobOf('', { documents }));
  const file = await openFile(bytes);
  const annotations = await (await file.getPage(1)).getAnnotations();
  const targets = await Promise.all(annotations.map((annotation) => file.getPageIndex(annotation.dest[0])));
  expect(targets).toEqual([1, 2]);
  expect((await pageTexts(bytes))[0]).toContain(`page ${startPage.b}.`);
});

test('print() states title, language and dates of the metadata', async () => {
  const file = await openFile((await print(jobOf('<p>Text</p>'))).bytes);
  const { info, metadata } = await file.getMetadata();
  expect(info).toMatchObject({ Title: 'Pack Q-SLM-P3', Language: 'en', CreationDate: "D:20260314150926+01'00'" });
  expect(metadata?.get('dc:title')).toBe('Pack Q-SLM-P3');
  expect(metadata?.get('pdfaid:part')).toBe('3');
  expect(metadata?.get('pdfuaid:part')).toBe('1');
  expect(file.fingerprints[0]).toBe('0123456789abcdef0123456789abcdef');
});

test.each([
  ['a link that leads nowhere', jobOf('<p><a href="#nowhere">Link</a></p>'), 'must lead to an id'],
  ['a page number of no document', jobOf('<p><span data-page-of="none"></span></p>'), 'must name a document'],
  [
    'a time without offset',
    jobOf('', { metadata: { ...jobOf('').metadata, issuedAt: '2026-03-14T15:09:26' } }),
    'with offset',
  ],
  [
    'an identifier of another length',
    jobOf('', { metadata: { ...jobOf('').metadata, identifier: 'abc' } }),
    '32 hexadecimal',
  ],
  ['two documents of one id', jobOf('', { documents: [page('a', ''), page('a', '')] }), 'must differ'],
])('print() throws for %s', async (_, job, message) => {
  await expect(print(job)).rejects.toThrow(message);
});
