/** Where the documents of a pack are on the screen. */
interface Place {
  /** Address that the identifier of a document is added to. */
  base: string;
  /** What stands after it. @default nothing */
  ending?: string;
  documents: readonly { id: string }[];
  /**
   * Address that the source of a picture is added to, or the file by its digest, undefined where it cannot be had.
   *
   * @default what pictures show stands in their place, in words
   */
  pictures?: string | ((sha256: string) => string | undefined);
}

// Documents come from our templates, which escape `<`, `>` and `"` in all that comes from a record: so a tag is found by its form. A parser
// takes ten times as long, 10 to 60 ms for the documents of one owner's page; that both agree is tested.
const SCROLLED_START = /<(table|svg)(?=[\s>])/g;
const SCROLLED_END = /<\/(table|svg)>/g;
const PICTURE = /<img src="(attachments\/([0-9a-f]{64}))" alt="([^"]*)">/g;
const REFERENCE = / href="#([^"]+)"/g;

/**
 * The HTML of a document as the screen shows it. What may be wider than a phone, tables and drawings, is framed and moved
 * sideways by finger or keyboard; neither is ever nested. References to other documents, which in print are pages of the same file, lead to
 * their own addresses.
 */
export function onScreen(html: string, { base, ending = '', documents, pictures }: Place): string {
  const known = new Set(documents.map(({ id }) => id));
  const shown = (source: string, sha256: string, alternative: string): string => {
    // What comes over a network waits until it is in sight.
    if (typeof pictures === 'string') return `<img src="${pictures}${source}" alt="${alternative}" loading="lazy">`;
    const file = pictures?.(sha256);
    return file === undefined ? `<p>${alternative}</p>` : `<img src="${file}" alt="${alternative}">`;
  };
  return html
    .replaceAll(SCROLLED_START, '<div class="scroll" tabindex="0"><$1')
    .replaceAll(SCROLLED_END, '</$1></div>')
    .replaceAll(PICTURE, (_, source: string, sha256: string, alternative: string) => shown(source, sha256, alternative))
    .replaceAll(REFERENCE, (reference, id: string) => (known.has(id) ? ` href="${base}${id}${ending}"` : reference));
}

/** Digests of the pictures that a document shows. */
export function picturesIn(html: string): string[] {
  return [...html.matchAll(PICTURE)].map(([, , sha256 = '']) => sha256);
}
