import type { Html } from '../../worker/local/markup/html.ts';

/** Page of the static site. */
export interface Page {
  /** Address without the ending of the file. */
  path: string;
  title: string;
  /** Description for search results, one sentence. */
  description: string;
  /** Name of the script in `site/browser`, if the page runs one. */
  script?: string;
  /** Whether the page uses the whole width of the window, for text next to its result. @default false */
  isWide?: boolean;
  /** Content under the title. */
  body: Html;
}
