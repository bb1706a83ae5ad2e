import { LIMITS } from '../../worker/core/limits.ts';
import { codeIn, type Html, html } from '../../worker/local/markup/html.ts';
import {
  ASSUMED,
  type Assumption,
  dollars,
  dollarsInMonth,
  PLAN_DOLLARS,
  PRICES,
  type Priced,
  usedInMonth,
} from '../build/cost.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

const YEARS = [1, 10] as const;

const [FIRST, LATER] = YEARS;

/** Formats a number with three digits; the assumptions are not more exact. */
const rounded = (value: number): string => Number(value.toPrecision(3)).toLocaleString('en');

const assumptionOf = ({ what, value, unit, basis }: Assumption): Html =>
  html`<tr><th scope="row">${what}</th><td class="num">${value.toLocaleString('en')}</td><td>${unit}</td><td>${codeIn(basis)}</td></tr>
`;

function priceOf(priced: Priced): Html {
  const { what, unit, perUnit, included, source } = PRICES[priced];
  const costs = YEARS.map((years) => {
    const used = usedInMonth(years)[priced];
    return html`<td class="num">${rounded(used)}</td><td class="num">${rounded(dollars(priced, used))}</td>`;
  });
  return html`<tr><th scope="row">${what}</th><td>${unit}</td><td class="num">${perUnit}</td><td class="num">${included}</td>${costs}<td>${source}</td></tr>
`;
}

const boundOf = ([name, value]: [string, number]): Html =>
  html`<tr><th scope="row"><code>${name}</code></th><td class="num">${value.toLocaleString('en')}</td></tr>
`;

const table = (head: readonly string[], rows: readonly Html[]): Html =>
  html`<div class="scroll" tabindex="0"><table class="compact"><thead><tr>${head.map((words) => html`<th scope="col">${words}</th>`)}</tr></thead>
<tbody>${rows}</tbody></table></div>
`;

const priced = Object.keys(PRICES) as Priced[];

/** Page with the needs and cost of a million aircraft on the deployed platform, calculated when the site is built. */
export const limitsAndCost: Page = {
  path: '/limits-and-cost',
  title: 'Limits and cost',
  description: 'What up to a million aircraft need on the platform, how data is sharded, and what it costs',
  body: html`${prose('limits-and-cost')}
<h2 id="assumptions">The assumed fleet</h2>
${table(['What', 'Value', '', 'Where from'], Object.values(ASSUMED).map(assumptionOf))}
<h2 id="cost">What it costs</h2>
<p>In US dollars a month, beyond what the paid plan includes, once ${FIRST} and once ${LATER} years have been kept. All of it together: <strong>${rounded(dollarsInMonth(FIRST))}</strong> and <strong>${rounded(dollarsInMonth(LATER))}</strong>, with ${PLAN_DOLLARS} for the plan; ${rounded((dollarsInMonth(LATER) * 12 * 100) / ASSUMED.aircraft.value)} cents a year and aircraft at the end. Rows read stay far within what is included.</p>
${table(['What', 'Unit', 'Price', 'Included', `Used, year ${FIRST}`, 'Cost', `Used, year ${LATER}`, 'Cost', 'Price read at'], priced.map(priceOf))}
<h2 id="bounds">Bounds of this service</h2>
<p>Each is one constant in <code>worker/core/limits.ts</code>; responses quote them. They are lower than those of the platform, so that a larger request is refused with a reason and not cut off.</p>
${table(['Bound', 'Value'], Object.entries(LIMITS).map(boundOf))}`,
};
