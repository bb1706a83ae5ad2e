/** Markup that is inserted into a page unescaped. */
export class Html {
  readonly markup: string;

  constructor(markup: string) {
    this.markup = markup;
  }
}

type Part = string | number | Html | readonly Part[];

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Creates markup from a template: strings and numbers are escaped, markup and lists of it are not. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(String.raw({ raw: strings }, ...parts.map(markupOf)));
}

function markupOf(part: Part): string {
  if (part instanceof Html) return part.markup;
  if (typeof part === 'object') return part.map(markupOf).join('');
  return String(part).replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);
}

/** Converts text with words between backquotes to markup with code, as in the descriptions of the code. */
export function codeIn(text: string): Html {
  return html`${text.split('`').map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece))}`;
}
