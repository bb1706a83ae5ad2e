import type { Item } from '../measure/item.ts';
import type { PrintFinding } from '../print-job.ts';

/** A page with every item at its position, from the top left corner of the text area. */
export interface Page {
  title: string;
  items: readonly Item[];
  /** Contains a page of another PDF, which may cover the drawing beneath. */
  isForeign: boolean;
}

/** Pages of all documents, the first page number of each, and the print findings. */
export interface Pages {
  pages: Page[];
  startPage: Record<string, number>;
  findings: PrintFinding[];
}
