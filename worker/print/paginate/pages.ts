import type { Item } from '../measure/item.ts';
import { measureArticle } from '../measure/measure-article.ts';
import { stack } from '../measure/stack.ts';
import type { Paper } from '../paper.ts';
import { parseArticle } from '../parse/parse-article.ts';
import type { PrintDocument, PrintFinding } from '../print-job.ts';
import { paginateClosedUp } from './closed-up.ts';

/** A page with everything in its place, from the top left corner of the text area. */
export interface Page {
  title: string;
  items: readonly Item[];
}

/** The pages of all documents, the first page number of each, and what could not be printed. */
export interface Pages {
  pages: Page[];
  startPage: Record<string, number>;
  findings: PrintFinding[];
}

/** Sets each document from parse to pages; each begins a new page. */
export function setPages(documents: readonly PrintDocument[], paper: Paper): Pages {
  const pages: Page[] = [];
  const startPage: Record<string, number> = {};
  const findings: PrintFinding[] = [];
  for (const { id, title, html } of documents) {
    if (id in startPage) throw new Error(`Cannot print: document ids must differ: current value is ${id} twice`);
    startPage[id] = pages.length + 1;
    const article = parseArticle(html);
    const strips = measureArticle(article, id, paper, (finding) => findings.push(finding));
    for (const { strips: onPage, overflows } of paginateClosedUp(strips, paper.bodyPt)) {
      if (overflows !== null) findings.push({ code: 'CONTENT_DOES_NOT_FIT', documentId: id, context: overflows });
      pages.push({ title, items: stack(onPage).items });
    }
  }
  return { pages, startPage, findings };
}
