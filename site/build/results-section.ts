import { type Html, html } from '../../worker/local/markup/html.ts';

/** Section of a page that shows the results of the record or form above. */
export const resultsSection = (of: 'record' | 'form'): Html => html`<section aria-labelledby="results">
<h2 id="results">Results</h2>
<p class="problem" id="stale" role="status" hidden>Results of the last ${of} that could be read, not of the content above.</p>
<dl class="figures" id="figures"></dl>
</section>`;
