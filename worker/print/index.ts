import { drawPages, type HeadsOf } from './draw/draw-pages.ts';
import { writeFile } from './file/write-file.ts';
import { setPages } from './paginate/pages.ts';
import { PAPERS } from './paper.ts';
import type { Printed, PrintFinding, PrintJob } from './print-job.ts';
import { printableText } from './text/printable-text.ts';

export type { PrintAttachment, PrintDocument, Printed, PrintFinding, PrintJob, PrintMetadata } from './print-job.ts';

function headsFor(
  job: PrintJob,
  pages: number,
  report: (finding: PrintFinding) => void,
): { headsOf: HeadsOf; mark: string } {
  const printable = (text: string): string => printableText(text, '', report);
  const [left, right] = [printable(job.header.left), printable(job.header.right)];
  const [footLeft, footCentre] = [printable(job.footer.left), printable(job.footer.centre)];
  const mark = printable(job.mark ?? '');
  const titles = new Map(job.documents.map(({ title }) => [title, printable(title)]));
  const headsOf: HeadsOf = (page, title) => ({
    headLeft: left,
    headCentre: titles.get(title) ?? '',
    headRight: right,
    footLeft,
    footCentre,
    footRight: `page ${page + 1} of ${pages}`,
    mark,
  });
  return { headsOf, mark };
}

/**
 * Typesets documents of the HTML subset into one tagged, archival PDF.
 *
 * The stages are a line each: parse, style, measure and paginate set every document into pages; draw turns them into content and structure;
 * the file is written around these. Text that the fonts lack and content that does not fit are findings beside the file; markup outside
 * the subset, links that lead nowhere and malformed metadata are our own mistakes and throw.
 */
export async function print(job: PrintJob): Promise<Printed> {
  const paper = PAPERS[job.paper];
  const set = setPages(job.documents, paper);
  const findings = [...set.findings];
  const { headsOf, mark } = headsFor(job, set.pages.length, (finding) => findings.push(finding));
  const drawn = drawPages(set, paper, headsOf, mark);
  const bytes = await writeFile(drawn, paper, job);
  return { bytes, pages: set.pages.length, startPage: set.startPage, findings };
}
