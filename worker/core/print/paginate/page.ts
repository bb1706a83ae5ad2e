import type { Item } from '../measure/item.ts';
import type { PrintFinding } from '../print-job.ts';

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
