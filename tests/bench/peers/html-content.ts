import type { PrintDocument } from '../../../worker/core/print/index.ts';
import { contentOf, type PageOfContent } from './content.ts';

function pageHtml({ heading, paragraphs, head, rows, plot }: PageOfContent): string {
  const cells = ([name, ...readings]: readonly string[]): string =>
    `<tr><th scope="row">${name}</th>${readings.map((reading) => `<td class="num">${reading}</td>`).join('')}</tr>`;
  const heads = head.map((text, i) => `<th scope="col"${i > 0 ? ' class="num"' : ''}>${text}</th>`).join('');
  return [
    `<h1>${heading}</h1>`,
    ...paragraphs.map((text) => `<p>${text}</p>`),
    `<table class="ruled compact"><thead><tr>${heads}</tr></thead><tbody>${rows.map(cells).join('')}</tbody></table>`,
    `<figure><svg viewBox="0 0 400 60" role="img" aria-label="Readings"><polyline points="${plot.map((point) => point.join(',')).join(' ')}" stroke="black" fill="none"/></svg></figure>`,
  ].join('');
}

/** The content as documents of the HTML subset, one a page. */
export function htmlDocuments(pages: number): PrintDocument[] {
  return contentOf(pages).map((page, i) => ({
    id: `d${i}`,
    title: page.heading,
    html: `<article id="d${i}" lang="en">${pageHtml(page)}</article>`,
  }));
}
