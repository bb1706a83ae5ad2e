import { PROBLEM_KINDS } from '../../worker/edge/http/problem-kinds.ts';
import { ROUTES } from '../../worker/edge/http/routes.ts';
import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { anchorOfCall } from './api-call.ts';
import { PROBLEM_HELP } from './problem-help.ts';

/** Pages of the kinds of problem, each at the address that its `type` names. */
export const problems: readonly Page[] = (Object.keys(PROBLEM_KINDS) as (keyof typeof PROBLEM_KINDS)[]).map((kind) => {
  const { status, title } = PROBLEM_KINDS[kind];
  const calls = ROUTES.filter(([, , , { problems = [] }]) => problems.includes(kind));
  const who =
    calls.length === 0
      ? ''
      : html`<h2>Calls with this problem</h2>
<ul>${calls.map(([method, path]) => html`<li><a href="/api#${anchorOfCall(method, path)}"><code>${method} ${path}</code></a></li>`)}</ul>`;
  return {
    path: `/problems/${kind}`,
    title,
    description: `The problem ${kind}, status ${status}`,
    body: html`<p>The response has status <strong>${status}</strong> and <code>"type": "/problems/${kind}"</code>. <code>detail</code> says what is
wrong with this request; <code>findings</code> lists every defect with its place and what to do.</p>
<h2>What to do</h2>
<p>${PROBLEM_HELP[kind]}</p>
${who}
<p><a href="/api#problems">All kinds of problem</a></p>`,
  };
});
