import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { type CaseStatus, type PublishedRow, publishedTable } from '../published/published-table.ts';

const STATUS: Readonly<Record<CaseStatus, string>> = {
  read: 'inputs and results read in the source',
  'read-in': 'inputs read in the source, results calculated by hand',
  memory: 'to be confirmed',
  derived: 'calculated by hand from a rule that was read',
};

/** Titles of topics, if different from the name in the cases. */
const TITLES: Readonly<Record<string, string>> = {
  'add-months': 'Calendar months',
  burn: 'Fuel burn',
  combine: 'Combined uncertainty',
  convert: 'Conversion of units',
  extreme: 'Adverse loading',
  factor: 'Unit factors',
  limit: 'Uncertainty from a limit of error',
  'mass-moment': 'Mass and moment',
  negligible: 'Negligible change',
  'percent-mac': 'Per cent of the mean aerodynamic chord',
  'us-range': 'Range of US addresses',
  'us-registration': 'US registration',
};

const titleOf = (topic: string): string =>
  TITLES[topic] ?? topic.replaceAll('-', ' ').replace(/^./, (first) => first.toUpperCase());

/** Formats a number with enough digits for a residual, without the noise of binary fractions. */
const printed = (value: number): string => String(Number(value.toPrecision(7))).replace('-', '−');
const residual = (value: number): string => (value === 0 ? '0' : printed(Number(value.toPrecision(2))));

const rows = publishedTable();
const topics = [...Map.groupBy(rows, ({ topic }) => topic)];

const rowOf = ({ quantity, expected, ours, residual: difference, tolerance }: PublishedRow): Html =>
  html`<tr><th scope="row">${quantity}</th><td class="num">${printed(expected)}</td><td class="num">${printed(ours)}</td><td class="num">${residual(difference)}</td><td class="num">${printed(tolerance)}</td></tr>
`;

function caseOf(id: string, quantities: readonly PublishedRow[]): Html {
  const [first] = quantities;
  if (!first) return html``;
  return html`<h3 id="${id}"><a class="self" href="#${id}">${id}</a></h3>
<p>${first.source}; ${first.place}. <span class="source">${STATUS[first.status]} · tolerance: ${first.why}</span></p>
<div class="scroll" tabindex="0"><table class="compact"><thead><tr><th scope="col">Quantity</th><th scope="col" class="num">Published</th><th scope="col" class="num">Ours</th><th scope="col" class="num">Residual</th><th scope="col" class="num">Tolerance</th></tr></thead>
<tbody>${quantities.map(rowOf)}</tbody></table></div>`;
}

const topicOf = ([topic, cases]: (typeof topics)[number]): Html => html`<h2 id="${topic}">${titleOf(topic)}</h2>
${[...Map.groupBy(cases, ({ id }) => id)].map(([id, quantities]) => caseOf(id, quantities))}`;

/** Page that compares our results with published ones, computed when the site is built. */
export const checks: Page = {
  path: '/checks',
  title: 'Published examples',
  description: 'Results of this code next to published examples, with source, status and residual',
  body: html`${prose('checks')}
<p>${new Set(rows.map(({ id }) => id)).size} cases, ${rows.length} quantities.</p>
<nav class="contents" aria-label="Topics"><ul>${topics.map(([topic]) => html`<li><a href="#${topic}">${titleOf(topic)}</a></li>`)}</ul></nav>
${topics.map(topicOf)}`,
};
