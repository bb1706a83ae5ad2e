import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { shopPage } from '../build/shop-page.ts';

/** Page of one aircraft of a workshop. */
export const aircraft: Page = shopPage({
  path: '/aircraft',
  title: 'Aircraft',
  description:
    'One aircraft of a workshop: visits in progress, what is due and open, empty-mass history, packs and links',
  script: 'aircraft',
  text: 'aircraft',
  work: html`<p class="lede"><strong id="which"></strong></p>
<p class="verdict bad" id="standing">Not read yet</p>
<section aria-labelledby="visits"><h2 id="visits">Visits in progress</h2><div id="in-hand"></div></section>
<section aria-labelledby="what-is-due"><h2 id="what-is-due">Due and open</h2><div id="due"></div></section>
<section aria-labelledby="empty-mass"><h2 id="empty-mass">Empty mass</h2><div id="history"></div></section>
<section aria-labelledby="all-packs"><h2 id="all-packs">Packs</h2><div id="packs"></div></section>
<section aria-labelledby="tables"><h2 id="tables">Tables</h2>
<p class="tools"><button type="button" id="equipment-csv" disabled>Equipment list (CSV)</button>
<button type="button" id="ledger-csv" disabled>Ledger (CSV)</button></p>
</section>`,
});
