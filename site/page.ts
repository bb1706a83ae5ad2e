import type { Html } from './html.ts';

/** One page of the static site. */
export interface Page {
  /** Its address, without the ending of the file. */
  path: string;
  title: string;
  /** One sentence for those who search. */
  description: string;
  /** What stands under the title. */
  body: Html;
}
