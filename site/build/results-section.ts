import { type Html, html } from '../../worker/local/markup/html.ts';

/** Where the results of what is written above are shown. */
export const resultsSection = (of: 'record' | 'form'): Html => html`<section aria-labelledby="results">
<h2 id="results">Results</h2>
<p class="problem" id="stale" role="status" hidden>As of the last ${of} that could be read: not of what stands above.</p>
<dl class="figures" id="figures"></dl>
</section>`;
