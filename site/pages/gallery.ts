import { PACK_DOCUMENTS, type ShownDocument } from '../gallery/pack.ts';
import { pictureName } from '../gallery/write-gallery.ts';
import { type Html, html } from '../html.ts';
import type { Page } from '../page.ts';
import { prose } from '../prose.ts';

const anchorOf = ({ first }: ShownDocument): string => `page-${first}`;

const pagesOf = ({ first, last }: ShownDocument): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

const pictureOf = (title: string, page: number): Html =>
  html`<li><a href="/assets/gallery/${pictureName(page)}"><img src="/assets/gallery/${pictureName(page)}" width="390" height="552" loading="lazy" alt="${title}, page ${page} of the pack"></a></li>
`;

const documentOf = (document: ShownDocument): Html => html`<h2 id="${anchorOf(document)}">${document.title}</h2>
<ul class="sheets">${pagesOf(document).map((page) => pictureOf(document.title, page))}</ul>`;

/** Every page of one pack, drawn when the site is built. */
export const gallery: Page = {
  path: '/gallery',
  title: 'A whole pack',
  description: 'Every page of the release pack of an invented visit of three days, as pictures and as a PDF',
  isWide: true,
  body: html`${prose('gallery')}
<nav class="contents" aria-label="Documents of the pack"><ul>${PACK_DOCUMENTS.map((document) => html`<li><a href="#${anchorOf(document)}">${document.title}</a></li>`)}</ul></nav>
${PACK_DOCUMENTS.map(documentOf)}`,
};
