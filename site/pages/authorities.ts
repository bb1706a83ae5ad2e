import { type Html, html } from '../../worker/local/markup/html.ts';
import { documentTitle } from '../authorities/document-title.ts';
import { REQUIRED_ENTRIES, type RequiredEntry } from '../authorities/required-entries.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Returns the link to a field on the page of the record. */
const fieldLink = (field: string): Html =>
  html`<a href="/record#${field.replaceAll('[]', '')}"><code>${field}</code></a>`;

const rowOf = ({ rule, entry, fields, documents }: RequiredEntry): Html =>
  html`<tr><th scope="row">${rule}</th><td>${entry}</td><td class="stacked">${fields.map((field) => html`${fieldLink(field)} `)}</td><td>${documents.map(documentTitle).join(', ')}</td></tr>
`;

const tableOf = ([title, entries]: [string, readonly RequiredEntry[]]): Html => html`<h2>${title}</h2>
<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">Paragraph</th><th scope="col">Entry</th><th scope="col">Field of the record</th><th scope="col">Place in the pack</th></tr></thead>
<tbody>${entries.map(rowOf)}</tbody></table></div>`;

/** Page for authorities: each entry that a rule requires, with its field and its place in the pack. */
export const authorities: Page = {
  path: '/authorities',
  title: 'For authorities',
  description: 'Each entry that 14 CFR 43, Part-ML and NCO.POL.105 require, with its field and its place in the pack',
  body: html`${prose('authorities')}
${Object.entries(REQUIRED_ENTRIES).map(tableOf)}`,
};
