import { EVIDENCE_RULES } from '../../worker/core/gate/obligations/evidence-rules.ts';
import type { Declarer, Obligation } from '../../worker/core/gate/obligations/obligation.ts';
import { OBLIGATIONS } from '../../worker/core/gate/obligations/table.ts';
import { inEnglish, sayIn } from '../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';
import { termOf } from '../../worker/core/text/terms.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

const say = sayIn(ENGLISH);

const DECLARERS: Readonly<Record<Declarer, string>> = {
  nobody: 'nobody',
  doer: 'the person who did the work, or who releases',
  another: 'another authorised person, or who releases',
  releaser: 'the person who releases',
  'two-people': 'the person who releases, with a second one',
};

const evidenceOf = ({ requires }: Obligation): Html[] =>
  requires.map((evidence) => {
    const { code } = EVIDENCE_RULES[evidence];
    return html`<div>${inEnglish(termOf(evidence))} (<a href="/rules#${code}"><code>${code}</code></a>)</div>`;
  });

const reasonsOf = ({ reasons }: Obligation): string =>
  reasons.length === 0 ? '' : `: ${reasons.map((reason) => inEnglish(termOf(reason))).join('; ')}`;

const rowOf = (obligation: Obligation): Html =>
  html`<tr><th scope="row" id="${obligation.id}">${say(obligation.title)}</th><td>${evidenceOf(obligation)}</td><td>${DECLARERS[obligation.notRequiredBy]}${reasonsOf(obligation)}</td><td>${obligation.source.text}</td></tr>
`;

/** Page with the table of obligations, as the release check uses it. */
export const obligations: Page = {
  path: '/obligations',
  title: 'What work requires',
  description: 'What happened to the aircraft, what must be shown, and who may state that it is not required',
  body: html`${prose('obligations')}
<p>${OBLIGATIONS.length} lines.</p>
<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">What happened</th><th scope="col">What must be shown</th><th scope="col">Who may state that it is not required</th><th scope="col">Source</th></tr></thead>
<tbody>${OBLIGATIONS.map(rowOf)}</tbody></table></div>`,
};
