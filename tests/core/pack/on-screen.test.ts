import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { describe, expect, test } from 'vitest';
import { draftDocuments } from '../../../worker/core/core.ts';
import { onScreen, picturesIn } from '../../../worker/core/pack/on-screen.ts';
import { fixturesIn } from '../../read-fixture.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { AT, assessed, posted } from './fixture.ts';

const PLACE = { base: '/p/x/documents/', documents: [{ id: 'cover' }, { id: 'weighing-report' }] };

describe('onScreen()', () => {
  test('frames tables and drawings, whatever their attributes', () => {
    expect(
      onScreen('<table class="ruled"><tr></tr></table><figure><svg\nviewBox="0 0 1 1"></svg></figure>', PLACE),
    ).toBe(
      '<div class="scroll" tabindex="0"><table class="ruled"><tr></tr></table></div><figure><div class="scroll" tabindex="0"><svg\nviewBox="0 0 1 1"></svg></div></figure>',
    );
  });

  test('leaves text that names a tag as it is', () => {
    const text = '<p>&lt;table&gt; and a tablecloth</p>';
    expect(onScreen(text, PLACE)).toBe(text);
  });

  test('leads references to other documents to their addresses and leaves those within the document', () => {
    const html = '<a href="#weighing-report">W</a><a href="#readings">R</a>';
    expect(onScreen(html, PLACE)).toBe('<a href="/p/x/documents/weighing-report">W</a><a href="#readings">R</a>');
  });

  test('leads pictures to where they can be had, and says in words what they show where they cannot', () => {
    const source = `attachments/${'ab'.repeat(32)}`;
    const html = `<figure><img src="${source}" alt="Photograph A1: loom"></figure>`;
    expect(onScreen(html, { ...PLACE, pictures: '/p/x/documents/' })).toBe(
      `<figure><img src="/p/x/documents/${source}" alt="Photograph A1: loom" loading="lazy"></figure>`,
    );
    expect(onScreen(html, PLACE)).toBe('<figure><p>Photograph A1: loom</p></figure>');
  });
});

type Element = DefaultTreeAdapterTypes.Element;

/** Elements of some markup as a parser of HTML finds them. */
function elementsOf(html: string): Element[] {
  const within = (node: DefaultTreeAdapterTypes.ChildNode): Element[] =>
    'tagName' in node ? [node, ...node.childNodes.flatMap(within)] : [];
  return parseFragment(html).childNodes.flatMap(within);
}

const attribute = ({ attrs }: Element, of: string): string | undefined => attrs.find(({ name }) => name === of)?.value;
const named = (elements: readonly Element[], ...names: string[]): Element[] =>
  elements.filter(({ tagName }) => names.includes(tagName));

/** A text of a record that looks like everything that is changed for the screen. */
const LIKE_MARKUP = `<table> </table> <svg> <img src="attachments/${'cd'.repeat(32)}" alt="x"> <a href="#cover">`;

describe('onScreen() agrees with a parser of HTML', () => {
  const cases = [...fixturesIn('visits').map((name) => [name, false] as const), ['nose-wheel-full', true] as const];
  test.each(cases)('over the documents of %s, hostile texts: %s', async (name, isHostile) => {
    const record = posted(name) as { visit: { summary: string } };
    if (isHostile) record.visit.summary = LIKE_MARKUP;
    const at = RELEASABLE_AT[name] ?? AT;
    const documents = await draftDocuments(await assessed(record, at), at);
    for (const { html } of documents) {
      const before = elementsOf(html);
      const after = elementsOf(onScreen(html, { base: '/d/', documents, pictures: (sha256) => `/files/${sha256}` }));
      const wide = named(after, 'table', 'svg');
      expect(wide).toHaveLength(named(before, 'table', 'svg').length);
      expect(after.filter((each) => attribute(each, 'class') === 'scroll')).toHaveLength(wide.length);
      for (const { parentNode } of wide) expect(attribute(parentNode as Element, 'class')).toBe('scroll');
      const pictures = named(before, 'img').map((each) => attribute(each, 'src')?.replace('attachments/', ''));
      expect(picturesIn(html)).toEqual(pictures);
      expect(named(after, 'img').map((each) => attribute(each, 'src'))).toEqual(
        pictures.map((each) => `/files/${each}`),
      );
      const ids = new Set(documents.map(({ id }) => `#${id}`));
      const references = named(before, 'a').map((each) => attribute(each, 'href') ?? '');
      expect(named(after, 'a').map((each) => attribute(each, 'href'))).toEqual(
        references.map((href) => (ids.has(href) ? `/d/${href.slice(1)}` : href)),
      );
    }
    if (isHostile) expect(documents.map(({ html }) => html).join('')).toContain('&lt;table&gt;');
  });
});
