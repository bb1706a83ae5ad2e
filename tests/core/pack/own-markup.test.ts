import { describe, expect, test } from 'vitest';
import { seal } from '../../../worker/core/core.ts';
import { isOwnMarkup, picturesShown } from '../../../worker/core/pipeline/own-markup.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, FILES, posted } from './fixture.ts';

const article = (inner: string, id = 'owner-summary'): string =>
  `<article id="${id}" lang="en"><header><h1>Summary</h1></header><section>${inner}</section></article>`;
const drawn = (paint: string): string =>
  article(
    `<figure><svg viewBox="0 0 1 1" role="img" aria-label="x" data-width-mm="9"><path d="M0 0" ${paint}/></svg></figure>`,
  );

describe('isOwnMarkup()', () => {
  test('takes a drawing in colours, and refuses one that fetches them', () => {
    expect(isOwnMarkup(drawn('fill="none" stroke="#336699"'))).toBe(true);
    for (const paint of ['fill="url(https://e.example/#a)"', 'stroke="URL(//e.example/a)"', 'fill="image(a)"'])
      expect(isOwnMarkup(drawn(paint)), paint).toBe(false);
  });

  test('takes the names of our documents alone, and on articles alone', () => {
    expect(isOwnMarkup(article('<p>x</p>'))).toBe(true);
    expect(isOwnMarkup(article('<p>x</p>', 'loading'))).toBe(false);
    expect(isOwnMarkup(article('<p id="loading">x</p>'))).toBe(false);
    expect(isOwnMarkup(article('<p id="cover">x</p>'))).toBe(false);
  });

  test('tells the pictures of a document, however their tags are written', () => {
    const [first, second] = ['ab'.repeat(32), 'cd'.repeat(32)];
    const html = article(
      `<figure><img src="attachments/${first}" alt="x"></figure><figure><img alt='x' src='attachments/${second}'></figure>`,
    );
    expect(picturesShown(html)).toEqual([first, second]);
    expect(picturesShown(html.replace('</section>', '<script></script></section>'))).toEqual([]);
  });

  test.each(Object.entries(RELEASABLE_AT))('takes every document of %s', async (name, at) => {
    const record = posted(name) as unknown as { release: { by: string } };
    const visit = await assessed(record, at);
    const place = { pack: 'REFERENCE-P1-1', number: 1, issue: 1, visit: name, before: [] };
    const attestation = { by: record.release.by, knowsOfNoHazard: true, at, read: visit.assessmentSha256 };
    const outcome = await seal(visit, attestation, place, FILES);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
    const refused = outcome.sealed.documents.filter(({ html }) => !isOwnMarkup(html));
    expect(refused.map(({ id }) => id)).toEqual([]);
  });
});
