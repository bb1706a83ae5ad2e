import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { shopPage } from '../build/shop-page.ts';

/** Page with every aircraft of a workshop. */
export const workshop: Page = shopPage({
  path: '/workshop',
  title: 'Aircraft and visits',
  description: 'All aircraft of a workshop, with current packs and visits in progress',
  script: 'workshop',
  text: 'workshop',
  work: html`<div class="tools"><label>Search by registration <input id="search" type="search" autocomplete="off"></label></div>
<p class="small" id="count" role="status"></p>
<div class="scroll" tabindex="0"><table role="table" class="blocks">
<thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">Aircraft</th><th scope="col" role="columnheader">Current pack</th><th scope="col" role="columnheader">Visits in progress</th></tr></thead>
<tbody id="fleet" role="rowgroup"></tbody>
</table></div>
<p><button type="button" id="more" hidden>Show more</button></p>`,
});
