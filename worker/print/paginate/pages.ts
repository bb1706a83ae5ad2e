import type { Words } from '../../words/words.ts';
import type { Annex } from '../annex/read-annex.ts';
import type { Item } from '../measure/item.ts';
import { articleTag, measureArticle } from '../measure/measure-article.ts';
import { stack } from '../measure/stack.ts';
import type { Paper } from '../paper.ts';
import { parseArticle } from '../parse/parse-article.ts';
import type { Picture } from '../picture/picture.ts';
import type { PrintDocument, PrintFinding } from '../print-job.ts';
import { paginateClosedUp } from './closed-up.ts';
import { foreignPages } from './foreign-pages.ts';

/** A page with everything in its place, from the top left corner of the text area. */
export interface Page {
  title: string;
  items: readonly Item[];
  /** The page of another PDF stands on it, which may cover what is drawn beneath. */
  isForeign: boolean;
}

/** The pages of all documents, the first page number of each, and what could not be printed. */
export interface Pages {
  pages: Page[];
  startPage: Record<string, number>;
  findings: PrintFinding[];
}

/** What documents show that is not in their HTML. */
export interface Beside {
  pictureOf: (source: string) => Picture;
  annexOf: (document: PrintDocument) => Annex | null;
  /** What stands on everything that nobody has released; empty where it is. */
  mark: string;
  words: Words;
}

/** Sets each document from parse to pages; each begins a new page, and the pages appended to it follow. */
export function setPages(
  documents: readonly PrintDocument[],
  paper: Paper,
  { pictureOf, annexOf, mark, words }: Beside,
): Pages {
  const pages: Page[] = [];
  const startPage: Record<string, number> = {};
  const findings: PrintFinding[] = [];
  const report = (finding: PrintFinding): void => {
    findings.push(finding);
  };
  for (const document of documents) {
    const { id, title, html } = document;
    if (id in startPage) throw new Error(`Cannot print: document ids must differ: current value is ${id} twice`);
    startPage[id] = pages.length + 1;
    const article = parseArticle(html);
    const tag = articleTag(article);
    const strips = measureArticle(article, tag, paper, { documentId: id, report, pictureOf, mark, words });
    for (const { strips: onPage, overflows } of paginateClosedUp(strips, paper.bodyPt)) {
      if (overflows !== null) findings.push({ code: 'CONTENT_DOES_NOT_FIT', documentId: id, context: overflows });
      pages.push({ title, items: stack(onPage).items, isForeign: false });
    }
    const annex = annexOf(document);
    if (annex) pages.push(...foreignPages(annex, document, { article: tag, paper, words }));
  }
  return { pages, startPage, findings };
}
