import { type Say, sayIn } from '../text/formatter.ts';
import { ENGLISH } from '../text/locale.ts';
import { drawPages } from './draw/draw-pages.ts';
import { writeFile } from './file/write-file.ts';
import type { Annex } from './import/index.ts';
import { inkObstacles } from './ink-obstacles.ts';
import { filesOf } from './job-files.ts';
import { headsFor } from './job-heads.ts';
import { articleTag, measureArticle } from './measure/measure-article.ts';
import { articlePages } from './paginate/article-pages.ts';
import { foreignPages } from './paginate/foreign-pages.ts';
import type { Page, Pages } from './paginate/page.ts';
import { type Paper, paperOf } from './paper.ts';
import { parseArticle } from './parse/parse-article.ts';
import type { Printed, PrintFinding, PrintJob } from './print-job.ts';
import { printableText } from './text/printable-text.ts';

export { INSPECTION, type InspectedAttachment, inspectAttachment } from './inspect-attachment.ts';
export { cleanImage } from './picture/read-picture.ts';
export type {
  Part,
  PrintAttachment,
  PrintDocument,
  Printed,
  PrintFinding,
  PrintJob,
  PrintMetadata,
} from './print-job.ts';

/** Processes each document from parsing to pages; each begins a new page, and the pages appended to it follow. */
function setPages(job: PrintJob, paper: Paper, say: Say): Pages & { annexes: Annex[] } {
  const pages: Page[] = [];
  const startPage: Record<string, number> = {};
  const findings: PrintFinding[] = [];
  const annexes: Annex[] = [];
  const report = (finding: PrintFinding): void => {
    findings.push(finding);
  };
  const { pictureOf, annexOf } = filesOf(job);
  const mark = printableText(job.mark ?? '', '', () => {});
  for (const document of job.documents) {
    const { id, html } = document;
    if (id in startPage) throw new Error(`Cannot print: document ids must differ: current value is ${id} twice`);
    startPage[id] = pages.length + 1;
    const article = parseArticle(html);
    const tag = articleTag(article);
    const strips = measureArticle(article, tag, paper, { documentId: id, report, pictureOf, mark, say });
    pages.push(...articlePages(strips, document, paper.bodyPt, report));
    const annex = annexOf(document);
    if (!annex) continue;
    annexes.push(annex);
    pages.push(...foreignPages(annex, document, { article: tag, paper, say }));
  }
  return { pages, startPage, findings, annexes };
}

/**
 * Typesets documents of the HTML subset into one tagged, archival PDF.
 *
 * Each document is parsed, measured in its styles and divided into pages; all pages are drawn into content and
 * structure; the file is written around these. Text that the fonts lack and content that does not fit are reported as
 * findings with the file; markup outside the subset, links without a target and malformed metadata are our own errors
 * and throw.
 */
export async function print(job: PrintJob): Promise<Printed> {
  const paper = paperOf(job.paper);
  const say = job.say ?? sayIn(ENGLISH);
  const { annexes, ...set } = setPages(job, paper, say);
  const findings = [...set.findings];
  const { headsOf, mark } = headsFor(job, { pages: set.pages.length, say }, (finding) => findings.push(finding));
  const drawn = drawPages(set, paper, headsOf, mark);
  const obstacles = [...annexes.flatMap((annex) => annex.obstacles), ...inkObstacles(annexes.map(({ inks }) => inks))];
  const claims = obstacles.length === 0;
  const { bytes, parts, plain } = writeFile(drawn, paper, job, claims);
  return { bytes, parts, plain, pages: set.pages.length, startPage: set.startPage, findings, claims };
}
