import type { Html } from '../../worker/local/markup/html.ts';

/** One page of the static site. */
export interface Page {
  /** Its address, without the ending of the file. */
  path: string;
  title: string;
  /** One sentence for those who search. */
  description: string;
  /** Name of the code in `site/browser` that the page runs, where it runs any. */
  script?: string;
  /** Takes the whole width of the window, where text stands beside what it gives. @default false */
  isWide?: boolean;
  /** What stands under the title. */
  body: Html;
}
