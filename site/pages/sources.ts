import { REGIMES } from '../../worker/core/gate/regimes/table.ts';
import type { Rule } from '../../worker/core/gate/rule.ts';
import { RULES } from '../../worker/core/gate/rules.ts';
import { mayBlock } from '../../worker/core/gate/source.ts';
import { REGIME_VALUE_NAMES } from '../../worker/core/pack/regime-value-names.ts';
import { UNREAD_FIGURES, unreadValues } from '../../worker/core/pack/unread-figures.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

const say = sayIn(ENGLISH);

const figures: Html[] = UNREAD_FIGURES.map(
  ({ name, source, why }) => html`<tr><th scope="row">${say(name)}</th><td>${source}</td><td>${why}</td></tr>
`,
);

const values: Html[] = REGIMES.flatMap((regime) =>
  unreadValues(regime).map(
    (name) =>
      html`<tr><th scope="row">${say(REGIME_VALUE_NAMES[name])}</th><td>${regime[name].source.text}</td><td>Of the regime <a href="/rules#regime-${regime.id}"><code>${regime.id}</code></a>. Known only as others report it.</td></tr>
`,
  ),
);

const ruleOf = ({ code, source }: Rule): Html =>
  html`<tr><th scope="row"><a href="/rules#${code}"><code>${code}</code></a></th><td>${source.text}</td></tr>
`;

/** Page with every figure whose source was not read, and why. */
export const sources: Page = {
  path: '/sources',
  title: 'Sources',
  description: 'Figures whose source was not read, why, and what that means for a pack',
  body: html`${prose('sources')}
<h2 id="figures">Figures to confirm</h2>
<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">Figure</th><th scope="col">Source</th><th scope="col">Why it is here</th></tr></thead>
<tbody>${figures}${values}</tbody></table></div>
<h2 id="rules">Rules that only caution by them</h2>
<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">Rule</th><th scope="col">Source</th></tr></thead>
<tbody>${RULES.filter(({ source }) => !mayBlock(source)).map(ruleOf)}</tbody></table></div>`,
};
