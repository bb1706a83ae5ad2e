import { describe, expect, test } from 'vitest';
import { onScreen } from '../../worker/pack/on-screen.ts';

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
