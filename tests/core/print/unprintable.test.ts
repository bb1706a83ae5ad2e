import { expect, test } from 'vitest';
import { print } from '../../../worker/core/print/index.ts';
import { PRINTABLE_RANGES, PRINTABLE_SIGNS } from '../../../worker/core/text/printable.ts';
import { pageTexts } from './read-back.ts';
import { jobOf } from './sample-job.ts';

const escapeHtml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const inRanges = PRINTABLE_RANGES.flatMap(([from, to]) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)),
);

// Spaces are not told apart by readers, and normalisation has one spelling for look-alikes: neither can come back as it went.
const signs = [...inRanges, ...PRINTABLE_SIGNS].filter((sign) => !' \u00a0\u00b5\u2011'.includes(sign));

test.each(['p', 'strong', 'em'])(
  'print() prints every printable sign in <%s> so that it can be read back',
  async (name) => {
    const lines = signs.map((sign) => `<${name}>a${escapeHtml(sign)}z</${name}>`);
    const { bytes, findings } = await print(jobOf(name === 'p' ? lines.join('') : `<p>${lines.join('<br>')}</p>`));
    const text = (await pageTexts(bytes)).join('\n');
    expect(signs.filter((sign) => !text.includes(`a${sign}z`))).toEqual([]);
    expect(findings).toEqual([]);
  },
);

test('print() replaces and reports what the fonts lack', async () => {
  const { bytes, findings } = await print(jobOf('<p>Tank \u{1F600} of \u4e2d\u{1F600}</p>'));
  expect(findings).toEqual([
    { code: 'TEXT_UNPRINTABLE', documentId: 'one', characters: ['\u{1F600}', '\u4e2d'], context: 'Tank □ of □□' },
  ]);
  expect((await pageTexts(bytes))[0]).toContain('Tank □ of □□');
});

test('print() reports a cell once, however often its table head is repeated', async () => {
  const rows = '<tr><td>Text</td></tr>'.repeat(120);
  const { findings } = await print(
    jobOf(`<table class="ruled"><thead><tr><th scope="col">\u4e2d</th></tr></thead><tbody>${rows}</tbody></table>`),
  );
  expect(findings).toHaveLength(1);
});

test.each([
  ['escaped markup', '&lt;/article&gt;&lt;script&gt;alert(1)&lt;/script&gt;'],
  ['bidirectional controls', '\u202eabc\u202c \u2066def\u2069'],
  ['a word of 100 kB', 'W'.repeat(100_000)],
  ['combining marks', `e${'\u0301'.repeat(500)} Z\u0351\u036b`],
  ['half a surrogate pair', '\ud83d end'],
  ['emoji sequences', '\u{1F468}\u200d\u{1F469}\u200d\u{1F467} \u{1F1E6}\u{1F1FA}'],
  ['brackets and backslashes', '((\\)) \\( \\\\ ĀČĨĩŜ'],
])('print() survives %s wherever text may stand', async (_, text) => {
  const html = `<p>${text}</p><table class="ruled"><tbody><tr><td>${text}</td><td class="num">${text}</td></tr></tbody></table><ul><li>${text}</li></ul><dl class="facts"><div><dt>${text}</dt><dd>${text}</dd></div></dl><aside class="note">${text}</aside><div class="columns"><p>${text}</p></div>`;
  const { pages, bytes } = await print(jobOf(html));
  expect(await pageTexts(bytes)).toHaveLength(pages);
});

test('print() prints escaped markup as text', async () => {
  const { bytes } = await print(jobOf('<p>&lt;b&gt;&amp;&quot;&#39;</p>'));
  expect((await pageTexts(bytes))[0]).toContain(`<b>&"'`);
});
