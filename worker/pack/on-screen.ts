/** Where the documents of a pack are on the screen. */
interface Place {
  /** Address that the identifier of a document is added to. */
  base: string;
  /** What stands after it. @default nothing */
  ending?: string;
  documents: readonly { id: string }[];
  /** Address that the source of a picture is added to. @default what pictures show stands in their place, in words */
  pictures?: string;
}

const PICTURE = /<img src="(attachments\/[0-9a-f]{64})" alt="([^"]*)">/g;

/**
 * The HTML of a document as the screen shows it. What may be wider than a phone, tables and drawings, is framed and moved
 * sideways by finger or keyboard; neither is ever nested, and text of a record cannot look like a tag. References to other
 * documents, which in print are pages of the same file, lead to their own addresses.
 */
export function onScreen(html: string, { base, ending = '', documents, pictures }: Place): string {
  const known = new Set(documents.map(({ id }) => id));
  return html
    .replaceAll(/<(table|svg)(?=[\s>])/g, '<div class="scroll" tabindex="0"><$1')
    .replaceAll(/<\/(table|svg)>/g, '</$1></div>')
    .replaceAll(PICTURE, (_, source: string, alternative: string) =>
      pictures === undefined
        ? `<p>${alternative}</p>`
        : `<img src="${pictures}${source}" alt="${alternative}" loading="lazy">`,
    )
    .replaceAll(/ href="#([^"]+)"/g, (reference, id: string) =>
      known.has(id) ? ` href="${base}${id}${ending}"` : reference,
    );
}
