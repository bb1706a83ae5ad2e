import { Html, html } from '../markup/html.ts';
import { DOCUMENT_SHEETS, documentSheet } from '../markup/styles.ts';
import { PLACES } from './format.ts';

/** Policy within the page: opened from a disk, it has no server to send the header. */
const POLICY =
  "default-src 'none'; style-src 'self' file:; img-src 'self' file: data:; base-uri 'none'; form-action 'none'";

export interface FolderPage {
  title: string;
  /** Path to the top of the folder, as `../../`. */
  toTop: string;
  /** Banner above the page, with the link back. */
  banner?: { text: string; isCurrent: boolean; back: string };
  body: Html;
}

/** Returns a page of the folder, with the same bytes in every export. */
export function folderPage({ title, toTop, banner, body }: FolderPage): string {
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<link rel="stylesheet" href="${toTop}${PLACES.style}">
</head>
<body>
${banner ? bannerOf(banner) : ''}
<main class="document">
${body}
</main>
</body>
</html>
`.markup;
}

const bannerOf = ({ text, isCurrent, back }: NonNullable<FolderPage['banner']>): Html =>
  html`<header class="banner ${isCurrent ? 'released' : 'superseded'}"><p>${text}</p><p><a href="${back}">Back to the aircraft</a></p></header>`;

/** Wraps markup that was escaped when it was made, such as an article of a pack. */
export const asItIs = (markup: string): Html => new Html(markup);

/** Returns a table that may be wider than the screen. */
export function table(caption: string, heads: readonly string[], rows: readonly (readonly (string | Html)[])[]): Html {
  return html`<div class="scroll" tabindex="0"><table>
<caption>${caption}</caption>
<thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>
${rows.map((cells) => html`<tr>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>\n`)}</tbody>
</table></div>`;
}

/** Returns the stylesheets of the documents, without the fonts, which are addresses of the site. */
export function folderStyle(): string {
  return DOCUMENT_SHEETS.map(documentSheet)
    .join('\n')
    .replaceAll(/@font-face \{[^}]*\}\n*/g, '');
}
