import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { shopPage } from '../build/shop-page.ts';

/** Page on which an inspector reads and releases a visit. */
export const inspection: Page = shopPage({
  path: '/inspection',
  title: 'Inspect and release',
  description: 'Read a visit with its open points, documents and changes, and release it',
  script: 'inspection',
  text: 'inspection',
  work: html`<p class="lede"><strong id="which"></strong> <a id="aircraft-page">Its aircraft</a></p>
<p class="verdict open" id="verdict" role="status">Not read yet</p>
<p class="until-sealed small"><a href="#open-points">Open points</a> · <a href="#the-documents">Documents</a> · <a href="#what-changed">What changed</a> · <a href="#the-release">Release</a></p>
<p class="problem" id="moved" role="alert" hidden></p>
<section class="until-sealed" aria-labelledby="open-points">
<h2 id="open-points">Open points</h2>
<p id="no-points" hidden>None.</p>
<ol class="findings" id="points"></ol>
</section>
<section class="until-sealed" aria-labelledby="the-documents">
<h2 id="the-documents">The pack as it would be</h2>
<div class="reading">
<ol class="ticks" id="ticks" aria-label="Documents, to be ticked as read"></ol>
<div>
<div class="tools"><label>Shown <select id="document" disabled></select></label></div>
<div class="document sheet" id="preview" role="region" aria-label="Document" tabindex="0"></div>
<p><button type="button" id="read-next" disabled>Tick as read, on to the next</button></p>
</div>
</div>
</section>
<section aria-labelledby="what-changed">
<h2 id="what-changed">Against the pack before</h2>
<div id="comparison"><p>Being calculated.</p></div>
</section>
<section aria-labelledby="the-release">
<h2 id="the-release">Release</h2>
<div id="release"></div>
</section>`,
});
