import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Marked } from 'marked';
import { Html } from '../../worker/local/markup/html.ts';

/** Returns the anchor of a heading: its words, in lower case, joined by hyphens. */
const anchorOf = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

const marked = new Marked({
  renderer: {
    heading({ tokens, depth, text }) {
      return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
  },
  hooks: {
    // Anything wider than a phone scrolls sideways inside its own frame, by finger or keyboard.
    postprocess: (text) =>
      text
        .replaceAll('<pre>', '<pre tabindex="0">')
        .replaceAll('<table>', '<div class="scroll" tabindex="0"><table>')
        .replaceAll('</table>', '</table></div>'),
  },
});

/** Returns the path of a Markdown text. */
export const contentPath = (name: string): string => join(import.meta.dirname, '../content', `${name}.md`);

/** Reads a Markdown text as markup. */
export function prose(name: string): Html {
  return new Html(markupOf(readFileSync(contentPath(name), 'utf8')));
}

/** Converts Markdown to markup. */
export function markupOf(markdown: string): string {
  return marked.parse(markdown, { async: false });
}
