import type { Severity } from '../../worker/core/gate/finding.ts';
import type { Regime, Sourced } from '../../worker/core/gate/regimes/regime.ts';
import { REGIMES } from '../../worker/core/gate/regimes/table.ts';
import type { Rule } from '../../worker/core/gate/rule.ts';
import { RULE_SET } from '../../worker/core/gate/rule-set.ts';
import { RULES } from '../../worker/core/gate/rules.ts';
import type { Source } from '../../worker/core/gate/source.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

const SEVERITIES: readonly [Severity, string][] = [
  ['blocks', 'Blocks release'],
  ['caution', 'Cautions: a named person must accept them'],
  ['note', 'Notes: printed only'],
];

const SURENESS: Readonly<Record<Source['status'], string>> = {
  read: 'read in the source',
  memory: 'to be confirmed',
  practice: 'custom of the trade',
};

const say = sayIn(ENGLISH);

const sourceOf = ({ text, status }: Source): Html => html`<span class="source">${text} · ${SURENESS[status]}</span>`;

const ruleOf = ({ code, meaning, remedy, source }: Rule): Html => html`<div class="rule" id="${code}">
<dt><a class="self" href="#${code}"><code>${code}</code></a></dt>
<dd>${meaning}. <span class="remedy">${say(remedy)}.</span> ${sourceOf(source)}</dd>
</div>
`;

const listOf = ([severity, title]: readonly [Severity, string]): Html => {
  const rules = RULES.filter((rule) => rule.severity === severity);
  return html`<h2 id="${severity}">${title} <span class="count">${rules.length} rules, <code>${severity}</code></span></h2>
<dl class="rules">${rules.map(ruleOf)}</dl>`;
};

const isSourced = (entry: [string, unknown]): entry is [string, Sourced<unknown>] =>
  typeof entry[1] === 'object' && entry[1] !== null && 'unit' in entry[1];

/** Splits the name of a value in code into words, without the unit, which follows the value. */
const wordsOf = (name: string): string =>
  name
    .replaceAll(/([A-Z])/g, ' $1')
    .toLowerCase()
    .replace(/^./, (first) => first.toUpperCase())
    .replace(/ (kg|mm|deg)$/, '');

function settingOf({ value, unit }: Sourced<unknown>): string {
  if (value === null) return 'no such rule';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'object' && !Array.isArray(value)) return JSON.stringify(value);
  return `${Array.isArray(value) ? value.join(', ') : value} ${['scope', 'classes'].includes(unit) ? '' : unit}`.trim();
}

const regimeOf = (
  regime: Regime,
): Html => html`<h3 id="regime-${regime.id}">${say(regime.title)} <code>${regime.id}</code></h3>
<p>Edition of ${regime.version}.</p>
<table class="fields"><thead><tr><th scope="col">Value</th><th scope="col">Setting and source</th></tr></thead>
<tbody>${Object.entries(regime)
  .filter(isSourced)
  .map(
    ([
      name,
      sourced,
    ]) => html`<tr><th scope="row">${wordsOf(name)}</th><td>${settingOf(sourced)} ${sourceOf(sourced.source)}</td></tr>
`,
  )}</tbody></table>
<h4>Statements that a release may make</h4>
<dl class="rules">${regime.statements.map(
  ({ id, title, covers, wording, ruleWording, source }) =>
    html`<div class="rule"><dt>${say(title)} <code>${id}</code></dt><dd>${say(wording, { inspection: '…' })} Covers: ${covers.join(', ')}. ${ruleWording === undefined ? '' : html`Wording of the rule: “${ruleWording}” `}${sourceOf(source)}</dd></div>`,
)}</dl>`;

/** Page with the catalogue of findings, and the regimes with the source of each value. */
export const rules: Page = {
  path: '/rules',
  title: 'Rules',
  description: 'Every rule of the release check, with what to do and its source',
  body: html`${prose('rules')}
<p>Rule set ${RULE_SET}, ${RULES.length} rules.</p>
<nav class="contents" aria-label="On this page"><ul>
${SEVERITIES.map(([severity, title]) => html`<li><a href="#${severity}">${title}</a></li>`)}
<li><a href="#regimes">Regimes</a></li></ul></nav>
${SEVERITIES.map(listOf)}
<h2 id="regimes">Regimes</h2>
<p>A regime is the set of rules that an aircraft is kept under; a record names it in <a href="/record#aircraft.regime"><code>aircraft.regime</code></a>.</p>
${REGIMES.map(regimeOf)}`,
};
