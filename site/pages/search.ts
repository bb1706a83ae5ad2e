import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';

/** Page that searches all pages, in the browser. */
export const search: Page = {
  path: '/search',
  title: 'Search',
  description: 'Find a field, a rule, a call, a formula or a published example',
  script: 'search',
  body: html`<p class="search"><label for="query">Words, all of which must be there; their beginnings suffice</label>
<input id="query" type="search" autocomplete="off" spellcheck="false" autofocus></p>
<noscript><p>The search works in the browser and needs scripts.</p></noscript>
<p id="count" role="status"></p>
<ol class="found" id="found"></ol>`,
};
