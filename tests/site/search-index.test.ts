import { describe, expect, test } from 'vitest';
import { excerpt } from '../../site/browser/search/excerpt.ts';
import { searchEntries } from '../../site/build/search-index.ts';
import { html } from '../../worker/local/markup/html.ts';

const body = html`<p>Before <code>all</code>.</p><h2 id="one">First <code>part</code></h2><p>Text of one.</p>
<table><tr><th id="one.field" scope="row"><a href="#one.field">field</a><span>number</span></th><td>Its meaning</td></tr></table>
<dl><div class="rule" id="CODE_OF_RULE"><dt><a href="#CODE_OF_RULE">CODE_OF_RULE</a></dt><dd>What it means</dd></div></dl>`;

describe('searchEntries()', () => {
  test('has an entry for the page and for each place with a heading, with the text after it', () => {
    const entries = searchEntries([{ path: '/page', title: 'Page', description: 'Of this page', body }]);
    expect(entries).toEqual([
      { id: '/page', title: 'Page', page: 'Page', text: 'Of this page Before all .' },
      { id: '/page#one', title: 'First part', page: 'Page', text: 'Text of one.' },
      { id: '/page#one.field', title: 'field', page: 'Page', text: 'Its meaning' },
      { id: '/page#CODE_OF_RULE', title: 'CODE_OF_RULE', page: 'Page', text: 'CODE_OF_RULE What it means' },
    ]);
  });
});

describe('excerpt()', () => {
  test('shows the words that were found, with what stands around the first', () => {
    const text = `${'far away '.repeat(40)}the Drop of (voltage) here ${'and beyond '.repeat(40)}`;
    const pieces = excerpt(text, ['voltage', 'drop']);
    expect(pieces.filter(({ isWord }) => isWord).map((piece) => piece.text)).toEqual(['Drop', 'voltage']);
    const shown = pieces.map((piece) => piece.text).join('');
    expect(shown).toMatch(/^… .* …$/);
    expect(text).toContain(shown.slice(2, -2));
  });

  test('takes no word for a pattern', () => {
    expect(excerpt('a (b) c', ['(b'])).toEqual([
      { text: 'a ', isWord: false },
      { text: '(b', isWord: true },
      { text: ') c', isWord: false },
    ]);
  });
});
