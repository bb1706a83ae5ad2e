import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { resultsSection } from '../build/results-section.ts';

/** Page that checks a record without a service: everything is computed in the browser. */
export const bench: Page = {
  path: '/bench',
  title: 'Check a record',
  description: 'Type or drop the record of a visit: calculated, checked and shown as documents in this browser',
  script: 'bench',
  isWide: true,
  body: html`${prose('bench')}
<noscript><p>The bench computes in the browser and needs scripts. <a href="/guide">The API</a> does the same.</p></noscript>
<div class="bench" id="bench">
<div class="tools">
<label>Start from <select id="example"><option value="">a text of your own</option></select></label>
<label>Record, photographs, documents <input id="files" type="file" multiple accept=".json,.pdf,.jpg,.jpeg,.png"></label>
<label>Assessed at <input id="at" type="datetime-local"></label>
</div>
<p class="small" id="put-back" role="status" hidden></p>
<div class="tools">
<label>Open item of an earlier pack <input id="open-item" maxlength="100" autocomplete="off" spellcheck="false" aria-describedby="answer-said"></label>
<button type="button" id="answer-item">Answer it</button>
</div>
<p class="small" id="answer-said" role="status" hidden></p>
<section class="record" id="record" aria-label="The record"></section>
<section class="says" aria-labelledby="says">
<h2 id="says">Findings</h2>
<p class="verdict open" id="verdict" role="status">Nothing to read yet</p>
<ol class="findings" id="findings"></ol>
</section>
</div>
${resultsSection('record')}
<section aria-labelledby="documents">
<h2 id="documents">Documents</h2>
<div class="tools">
<label>Shown <select id="document" disabled></select></label>
<button type="button" id="make-pdf" disabled>Make the PDF</button>
<a id="pdf" target="_blank" hidden>Open the PDF, marked NOT RELEASED</a>
</div>
<div class="document sheet" id="preview"></div>
</section>
${prose('bench-curl')}`,
};
