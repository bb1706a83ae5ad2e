import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { resultsSection } from '../build/results-section.ts';
import { formField } from '../weighing-form/field.ts';
import { SECTIONS } from '../weighing-form/sections.ts';

const sections = SECTIONS.map(
  ({ legend, hint, fields }) => html`<fieldset><legend>${legend}</legend>
${hint === undefined ? '' : html`<p class="hint">${hint}</p>`}
<div class="fill">${fields.map(formField)}</div>
</fieldset>
`,
);

/** Page with a form for a weighing, which becomes a record and a report; no tool needed. */
export const weighingForm: Page = {
  path: '/weighing-form',
  title: 'Weighing form',
  description: 'Fill in a weighing and save its record and report, all in this browser',
  script: 'weighing-form',
  isWide: true,
  body: html`${prose('weighing-form')}
<noscript><p>The form computes in the browser and needs scripts.</p></noscript>
<p class="tools"><button type="button" id="fill-example">Fill in an example</button></p>
<p class="small" id="put-back" role="status" hidden></p>
<div class="bench">
<form id="form" novalidate>
${sections}
</form>
<section class="says" aria-labelledby="says">
<h2 id="says">Findings</h2>
<p class="verdict open" id="verdict" role="status">Nothing filled in yet</p>
<ol class="findings" id="findings"></ol>
<p class="tools"><a class="button" id="save-record" download="record.json" hidden>Save the record</a>
<button type="button" id="make-pdf" disabled>Make the PDF</button>
<a id="pdf" target="_blank" hidden>Open the PDF, marked NOT RELEASED</a></p>
</section>
</div>
${resultsSection('form')}
<section aria-labelledby="documents">
<h2 id="documents">Documents</h2>
<div class="tools"><label>Shown <select id="document" disabled></select></label></div>
<div class="document sheet" id="preview"></div>
</section>`,
};
