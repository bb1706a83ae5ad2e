import type { Say } from '../text/formatter.ts';
import * as m from '../text/generated/messages.ts';
import type { HeadsOf } from './draw/draw-pages.ts';
import type { PrintFinding, PrintJob } from './print-job.ts';
import { printableText } from './text/printable-text.ts';

/** Returns running heads of every page of a job, and its mark, in printable characters; others are reported. */
export function headsFor(
  job: PrintJob,
  { pages, say }: { pages: number; say: Say },
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
    footRight: printable(say(m.jobHeads_page, { page: page + 1, pages })),
    mark,
  });
  return { headsOf, mark };
}
