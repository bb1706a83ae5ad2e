import { openapi } from '../../worker/edge/http/openapi.ts';
import { PROBLEM_KINDS } from '../../worker/edge/http/problem-kinds.ts';
import type { Route } from '../../worker/edge/http/route.ts';
import { ROUTES } from '../../worker/edge/http/routes.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';
import { anchorOfCall, callOf, type Described } from './api-call.ts';

/** Groups of calls, by the first pattern that matches the path. */
const GROUPS: readonly [id: string, title: string, RegExp][] = [
  ['assess', 'Assess without keeping', /^\/v1\/assessments/],
  ['visits', 'Visits of an aircraft', /\/visits/],
  ['aircraft', 'The archive of an aircraft', /^\/v1\/aircraft/],
  ['files', 'Photographs and documents', /^\/v1\/attachments/],
  ['links', 'Links to a pack', /\/links/],
  ['packs', 'Sealed packs', /^\/v1\/packs/],
  ['readers', 'What a link opens', /^\/p\//],
  ['keys', 'Workshops, people and keys', /^\/v1\/(workshops|people|keys|seal-keys)/],
  ['service', 'The service itself', /./],
];

const { paths } = openapi(ROUTES) as { paths: Record<string, Record<string, unknown>> };

const groupOf = ([, path]: Route): string => GROUPS.find(([, , pattern]) => pattern.test(path))?.[0] ?? '';

function describedOf([method, path]: Route): Described {
  const item = paths[path] as { parameters?: Described['parameters'] } & Record<string, Described>;
  const call = item[method.toLowerCase()];
  if (!call) throw new Error(`Cannot describe ${method} ${path}: the interface description lacks it`);
  return { ...call, parameters: [...(item.parameters ?? []), ...(call.parameters ?? [])] };
}

const group = ([id, title]: (typeof GROUPS)[number]): Html => html`<h2 id="${id}">${title}</h2>
${ROUTES.filter((route) => groupOf(route) === id).map((route) => callOf(route, describedOf(route)))}`;

const overview = GROUPS.map(
  ([id, title]) =>
    html`<li><a href="#${id}">${title}</a><ul>${ROUTES.filter((route) => groupOf(route) === id).map(
      ([method, path]) => html`<li><a href="#${anchorOfCall(method, path)}"><code>${method} ${path}</code></a></li>`,
    )}</ul></li>`,
);

const problemRows = Object.entries(PROBLEM_KINDS).map(
  ([kind, { status, title }]) =>
    html`<div><dt>${status} <a href="/problems/${kind}"><code>${kind}</code></a></dt><dd>${title}</dd></div>`,
);

/** Page with every call, from the published API description. */
export const api: Page = {
  path: '/api',
  title: 'API',
  description: 'Every call with its scope, parameters, responses and problems; the meaning of each ETag',
  body: html`${prose('api')}
<nav class="contents calls" aria-label="Calls"><ul>${overview}</ul></nav>
${GROUPS.map(group)}
<h2 id="problems">Kinds of problem</h2>
<p>Every refusal is <code>application/problem+json</code> (RFC 9457). The slug at the end of <code>type</code> never changes its meaning.
Any call can answer <code>malformed-request</code>, <code>not-found</code>, <code>internal</code> and <code>unavailable</code>; one that reads what is stored, <code>damaged</code>; one that needs a key, <code>unauthorized</code>, <code>forbidden</code> and <code>too-many-requests</code>.</p>
<dl class="answers wide">${problemRows}</dl>`,
};
