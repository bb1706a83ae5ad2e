import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { exampleOf } from '../formulas/example-part.ts';
import type { Formula, Meaning, Topic } from '../formulas/formula.ts';
import { frame, math } from '../formulas/math.ts';
import { originOf } from '../formulas/origins.ts';
import { TOPICS } from '../formulas/topics.ts';

/** Returns the sources of a formula with its functions, each source once. */
function sourcesOf({ by }: Formula): Html {
  const origins = Map.groupBy(by.map(originOf), ({ source }) => source);
  return html`<ul class="sources">${[...origins].map(
    ([source, functions]) =>
      html`<li>${functions.map(({ name, file }, index) => html`${index > 0 ? ', ' : ''}<code title="${file}">${name}()</code>`)}: ${source}</li>`,
  )}</ul>`;
}

const symbolOf = ([symbol, meaning, unit]: Meaning): Html =>
  html`<div><dt>${math(symbol)}</dt><dd>${meaning}${unit && html` <span class="unit">${unit}</span>`}</dd></div>
`;

const formulaOf = (formula: Formula): Html => html`<section class="formula" id="${formula.id}">
<h3><a class="self" href="#${formula.id}">${formula.title}</a></h3>
${frame(
  'Formula',
  formula.tex.map((line) => math(line, 'block')),
)}
<dl class="symbols">${formula.symbols.map(symbolOf)}</dl>
<p>${formula.holds}</p>
${exampleOf(formula)}
${sourcesOf(formula)}
</section>
`;

const topicOf = ({ id, title, formulas: all }: Topic): Html => html`<h2 id="${id}">${title}</h2>
${all.map(formulaOf)}`;

const count = TOPICS.flatMap((topic) => topic.formulas).length;

/** Page with every formula, its source and a computed example. */
export const formulas: Page = {
  path: '/formulas',
  title: 'Formulas',
  description:
    'Every formula that a pack is calculated with: symbols, source, limits, and an example calculated by the code',
  body: html`${prose('formulas')}
<p>${count} formulas in ${TOPICS.length} topics.</p>
<nav class="contents" aria-label="Topics"><ul>${TOPICS.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>`)}</ul></nav>
${TOPICS.map(topicOf)}`,
};
