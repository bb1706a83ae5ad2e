import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { PACK_DOCUMENTS, type ShownDocument } from '../gallery/pack.ts';
import { pictureName } from '../gallery/write-gallery.ts';

const anchorOf = ({ first }: ShownDocument): string => `page-${first}`;

const pagesOf = ({ first, last }: ShownDocument): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

const sheetOf = (title: string, page: number): Html =>
  html`<li id="page-${page}"><a href="/assets/gallery/${pictureName(page)}"><img src="/assets/gallery/${pictureName(page)}" width="390" height="552" loading="lazy" alt="Page ${page}"> <span class="small">${title}</span></a></li>
`;

/** Page with all pages of one pack, drawn when the site is built. */
export const gallery: Page = {
  path: '/gallery',
  title: 'Sample pack',
  description: 'Every page of the release pack of an invented visit of three days, as pictures and as a PDF',
  isWide: true,
  body: html`${prose('gallery')}
<nav class="contents" aria-label="Documents of the pack"><ul>${PACK_DOCUMENTS.map((document) => html`<li><a href="#${anchorOf(document)}">${document.title}</a></li>`)}</ul></nav>
<ol class="sheets">${PACK_DOCUMENTS.map((document) => pagesOf(document).map((page) => sheetOf(document.title, page)))}</ol>`,
};
