import { stack } from '../measure/stack.ts';
import type { Strip } from '../measure/strip.ts';
import type { PrintDocument, PrintFinding } from '../print-job.ts';
import { paginateClosedUp } from './closed-up.ts';
import type { Page } from './page.ts';

/** Returns the pages of one measured article. A strip higher than a page is reported. */
export function articlePages(
  strips: readonly Strip[],
  { id, title }: Pick<PrintDocument, 'id' | 'title'>,
  bodyPt: number,
  report: (finding: PrintFinding) => void,
): Page[] {
  return paginateClosedUp(strips, bodyPt).map(({ strips: onPage, overflows }) => {
    if (overflows !== null) report({ code: 'CONTENT_DOES_NOT_FIT', documentId: id, context: overflows });
    return { title, items: stack(onPage).items, isForeign: false };
  });
}
