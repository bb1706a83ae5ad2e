/** Addresses of the documents of a pack on the screen. */
interface Place {
  /** Prefix of the address of a document, before its identifier. */
  base: string;
  /** Suffix of that address. @default empty */
  ending?: string;
  documents: readonly { id: string }[];
  /**
   * Prefix of the address of a picture, before its source, or its file by digest; undefined if it is not available.
   *
   * @default alternative text in place of pictures
   */
  pictures?: string | ((sha256: string) => string | undefined);
}

// Documents come from our templates, which escape `<`, `>` and `"` in all data from a record: so a tag is found by its
// form. A parser takes ten times as long, 10 to 60 ms for the documents of one owner's page; a test checks that both
// agree.
const SCROLLED_START = /<(table|svg)(?=[\s>])/g;
const SCROLLED_END = /<\/(table|svg)>/g;
const PICTURE = /<img src="(attachments\/([0-9a-f]{64}))" alt="([^"]*)">/g;
const REFERENCE = / href="#([^"]+)"/g;

/**
 * Returns the HTML of a document for the screen. Elements that may be wider than a phone, tables and drawings, get a
 * frame that scrolls sideways by finger or keyboard; neither is ever nested. References to other documents, which in
 * print are pages of the same file, link to their own addresses.
 */
export function onScreen(html: string, { base, ending = '', documents, pictures }: Place): string {
  const known = new Set(documents.map(({ id }) => id));
  const shown = (source: string, sha256: string, alternative: string): string => {
    // Pictures from a network load when in sight.
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

/** Returns the digests of the pictures in a document. */
export function picturesIn(html: string): string[] {
  return [...html.matchAll(PICTURE)].map(([, , sha256 = '']) => sha256);
}
