import { describe, expect, test } from 'vitest';
import { print } from '../../../worker/core/print/index.ts';
import { pageTexts } from './read-back.ts';
import { jobOf, lines, paragraphs, tableOf } from './sample-job.ts';

const textsOf = async (html: string): Promise<string[]> => pageTexts((await print(jobOf(html))).bytes);
const pageWith = (texts: readonly string[], part: string): number => texts.findIndex((text) => text.includes(part));

describe('tables', () => {
  test('print() repeats caption and head of a table on each page it runs on to', async () => {
    const texts = await textsOf(tableOf(150));
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.map((text) => text.includes('Readings (continued)'))).toEqual(texts.map((_, i) => i > 0));
    expect(texts.every((text) => /Place\s*Mass/.test(text))).toBe(true);
  });

  test('print() prints every row once', async () => {
    const text = (await textsOf(tableOf(150))).join('\n');
    const rows = [...text.matchAll(/Row (\d+)/g)].map(([, row]) => Number(row));
    expect(rows).toEqual(Array.from({ length: 150 }, (_, i) => i + 1));
  });

  test('print() keeps at least two rows with the head wherever the table begins', async () => {
    for (let before = 24; before < 37; before++) {
      const texts = await textsOf(`${lines(before)}${tableOf(40)}`);
      expect(pageWith(texts, 'Row 2')).toBe(pageWith(texts, 'Readings'));
    }
  });

  test('print() keeps totals with the last row', async () => {
    for (let rows = 38; rows < 48; rows++) {
      const total = '<tfoot><tr class="total"><th scope="row">Total</th><td class="num">99.0</td></tr></tfoot></table>';
      const texts = await textsOf(tableOf(rows).replace('</table>', total));
      expect(pageWith(texts, 'Total')).toBe(pageWith(texts, `Row ${rows}`));
    }
  });

  test('print() divides a row that is longer than a page', async () => {
    const { findings, pages } = await print(
      jobOf(`<table class="ruled"><tbody><tr><td>${'word '.repeat(4000)}</td><td>b</td></tr></tbody></table>`),
    );
    expect(findings).toEqual([]);
    expect(pages).toBeGreaterThan(1);
  });

  test('print() refuses rows of different width', async () => {
    const html = '<table class="ruled"><tbody><tr><td>a</td></tr><tr><td>a</td><td>b</td></tr></tbody></table>';
    await expect(print(jobOf(html))).rejects.toThrow('equally wide');
  });
});

describe('keeping together', () => {
  test('print() keeps a heading with the first lines of its text', async () => {
    for (let before = 24; before < 37; before++) {
      const texts = await textsOf(`${lines(before)}<h2>Heading</h2><p>Follows closely.</p>`);
      expect(pageWith(texts, 'Heading')).toBe(pageWith(texts, 'Follows closely'));
    }
  });

  test('print() keeps a section of class keep on one page', async () => {
    for (let before = 24; before < 37; before++) {
      const texts = await textsOf(
        `${lines(before)}<section class="keep"><h2>Kept</h2>${paragraphs(3)}<p>The end.</p></section>`,
      );
      expect(pageWith(texts, 'Kept')).toBe(pageWith(texts, 'The end.'));
    }
  });

  test('print() keeps a signing field whole', async () => {
    const field =
      '<div class="signature"><p>I attest what this says.</p><dl><div><dt>Name</dt><dd>Ida Example</dd></div><div><dt>Date</dt><dd></dd></div></dl></div>';
    for (let before = 24; before < 37; before++) {
      const texts = await textsOf(`${lines(before)}${field}`);
      expect(pageWith(texts, 'I attest')).toBe(pageWith(texts, 'Ida Example'));
    }
  });

  test('print() sets columns that no page could hold one below the other', async () => {
    const texts = await textsOf(`<div class="columns">${paragraphs(60)}</div>`);
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.join('\n')).toContain('60. The instrument');
  });
});

describe('cut-outs', () => {
  const cut = (html: string, width = 148, height = 105): string =>
    `<div class="cut" data-width-mm="${width}" data-height-mm="${height}">${html}</div>`;

  test('print() sets a cut-out that its content fits', async () => {
    expect((await print(jobOf(cut(paragraphs(3))))).findings).toEqual([]);
  });

  test('print() lets a cut-out grow with its content', async () => {
    const job = jobOf(cut(`<h2>Card</h2>${paragraphs(12)}`, 148, 20));
    expect((await print(job)).findings).toEqual([]);
    const texts = await textsOf(cut(`<h2>Card</h2>${paragraphs(12)}`, 148, 20));
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain('12. The instrument');
    expect(texts[0]).not.toContain('card 1 of');
  });

  test('print() goes on on further cards where a page does not hold one, each with its heading and its number', async () => {
    const rows = Array.from({ length: 120 }, (_, row) => `<tr><td>Row ${row + 1}</td></tr>`).join('');
    const table = `<table class="plain"><thead><tr><th scope="col">Head</th></tr></thead><tbody>${rows}</tbody></table>`;
    const html = cut(`<h2>Loading card</h2>${table}`, 125, 64);
    expect((await print(jobOf(html))).findings).toEqual([]);
    const texts = await textsOf(html);
    expect(texts.length).toBeGreaterThan(2);
    for (const [index, text] of texts.entries()) {
      expect(text).toContain(`card ${index + 1} of ${texts.length}; complete only with all ${texts.length} cards`);
      for (const repeated of ['Loading card', 'Head']) expect(text).toContain(repeated);
    }
    const whole = texts.join('\n');
    for (let row = 1; row <= 120; row++) expect(whole).toMatch(new RegExp(`Row ${row}\\b`));
  });

  test('print() puts the mark of a draft inside every card', async () => {
    const html = cut(`<h2>Card</h2>${paragraphs(60)}`, 125, 40);
    const job = { ...jobOf(html), mark: 'NOT RELEASED' };
    const { bytes } = await print(job);
    const texts = await pageTexts(bytes);
    // Across the page, in its foot, and on the card.
    for (const text of texts) expect(text.match(/NOT RELEASED/g)).toHaveLength(3);
    expect((await textsOf(html)).join('')).not.toContain('NOT RELEASED');
  });

  test('print() reports a cut-out that the page does not hold', async () => {
    expect((await print(jobOf(cut('<p>Text</p>', 190, 50)))).findings).toHaveLength(1);
    expect((await print(jobOf(cut('<p>Text</p>', 148, 280)))).findings).toHaveLength(1);
  });
});

describe('lettering of a drawing', () => {
  const drawing = (width: number, text: string): string =>
    `<figure><svg viewBox="0 0 ${width} 40" role="img" aria-label="x">${text}</svg></figure>`;

  test('print() moves in what would leave the drawing', async () => {
    for (const text of [
      '<text x="90" y="20">Far too long</text>',
      '<text x="5" y="20" text-anchor="end">Far too long</text>',
      '<text x="98" y="20" text-anchor="middle">Far too long</text>',
    ])
      expect((await print(jobOf(drawing(100, text)))).findings).toEqual([]);
  });

  test('print() reports what is wider than the drawing', async () => {
    const { findings } = await print(jobOf(drawing(30, '<text x="0" y="20">Far too long</text>')));
    expect(findings).toEqual([{ code: 'CONTENT_DOES_NOT_FIT', documentId: 'one', context: 'Far too long' }]);
  });
});

test('print() throws for a drawing whose numbers are none', async () => {
  const svg =
    '<svg viewBox="0 0 100 40" role="img" aria-label="x"><line x1="a" y1="0" x2="9" y2="9" stroke="black"/></svg>';
  await expect(print(jobOf(`<figure>${svg}</figure>`))).rejects.toThrow('finite number');
});

test('print() keeps the paragraph between a heading and a table with the table', async () => {
  const rows = '<tr><td>Row</td></tr>'.repeat(3);
  const table = `<table class="ruled"><thead><tr><th scope="col">Head</th></tr></thead><tbody>${rows}</tbody></table>`;
  // Text pushes the heading towards the foot of the first page, line by line.
  const pages = new Set<number>();
  for (let before = 24; before < 40; before++) {
    const section = `<section><h2>Heading</h2><p>Introduction</p>${table}</section>`;
    const texts = await textsOf(`${lines(before)}${section}`);
    const page = pageWith(texts, 'Introduction');
    expect(pageWith(texts, 'Heading')).toBe(page);
    expect(pageWith(texts, 'Row')).toBe(page);
    pages.add(page);
  }
  expect([...pages]).toEqual([0, 1]);
});
