import { expect, test } from 'vitest';
import { childElements, textOf } from '../../../../worker/core/print/parse/markup.ts';
import { parseArticle } from '../../../../worker/core/print/parse/parse-article.ts';

const article = (html: string): string => `<article id="a" lang="en">${html}</article>`;

test('parseArticle() undoes HTML escaping and collapses nothing', () => {
  const [paragraph] = childElements(parseArticle(article('<p>a &lt;b&gt; &amp;  c</p>')));
  expect(paragraph?.children).toEqual(['a <b> &  c']);
  expect(paragraph && textOf(paragraph)).toBe('a <b> & c');
});

test('parseArticle() keeps the names of SVG', () => {
  const figure = parseArticle(article('<figure><svg viewBox="0 0 1 1" role="img" aria-label="x"></svg></figure>'));
  expect(childElements(figure)[0]?.children[0]).toMatchObject({ name: 'svg', attributes: { viewBox: '0 0 1 1' } });
});

test.each([
  ['an element outside the subset', article('<blink>x</blink>'), '<blink>'],
  ['an attribute outside the subset', article('<p style="color:red">x</p>'), '"style"'],
  ['a class outside the subset', article('<p class="big">x</p>'), 'class "big"'],
  ['text where none may stand', article('<ul>x<li>y</li></ul>'), '<ul> must not hold text'],
  ['a heading that leaves out a level', article('<h1>x</h1><h3>y</h3>'), '<h3>'],
  ['anything but one article', '<p>x</p>', 'one <article>'],
  ['two articles', article('') + article(''), 'one <article>'],
])('parseArticle() throws for %s', (_, html, message) => {
  expect(() => parseArticle(html)).toThrow(message);
});
