import { PROBLEM_KINDS, type ProblemKind } from '../../worker/edge/http/problem-kinds.ts';
import type { Route } from '../../worker/edge/http/route.ts';
import { codeIn, type Html, html } from '../../worker/local/markup/html.ts';
import { fieldTable } from '../build/field-table.ts';
import type { SchemaNode } from '../build/schema-node.ts';

type Content = Readonly<Record<string, { schema: SchemaNode }>>;

/** Part of an operation of the API description that the page shows. */
export interface Described {
  summary: string;
  description?: string;
  parameters?: readonly { name: string; in: string; description: string }[];
  requestBody?: { description: string; content: Content };
  responses: Readonly<Record<string, { description?: string; content?: Content; headers?: Record<string, unknown> }>>;
}

/** Returns the anchor of a call on the page. */
export const anchorOfCall = (method: string, path: string): string =>
  `${method.toLowerCase()}${path.replaceAll(/[{}]/g, '').replaceAll(/[^A-Za-z0-9]+/g, '-')}`;

const ACCESS: Readonly<Record<string, string>> = {
  public: 'Open to anybody',
  deployment: 'Needs the secret of the deployment',
};

/** Returns the section of a call: purpose, parameters, responses. */
export function callOf([method, path, access, { problems = [] }]: Route, call: Described): Html {
  const { summary, description, parameters = [], requestBody, responses } = call;
  const anchor = anchorOfCall(method, path);
  const [text = ''] = (description ?? '').split(/\s*Needs the scope/);
  return html`<section class="call" aria-labelledby="${anchor}">
<h3 id="${anchor}"><a class="self" href="#${anchor}"><code>${method} ${path}</code></a></h3>
<p><strong>${summary}.</strong> ${codeIn(text)} ${ACCESS[access] ?? html`Needs a key with the scope <code>${access}</code>`}.</p>
${parameters.length === 0 ? '' : parameterList(parameters)}
${requestBody ? bodyOf(anchor, requestBody) : ''}
<p class="label">Answers</p>
<dl class="answers">${Object.entries(responses)
    .filter(isSuccess)
    .map(([status, answer]) => answerOf(anchor, status, answer))}</dl>
${problems.length === 0 ? '' : html`<p class="label">Problems</p><p class="problems">${problems.map(problemLink)}</p>`}
</section>
`;
}

const isSuccess = ([status]: [string, unknown]): boolean => Number(status) < 400;

/** Returns a link to the page of a kind of problem. */
const problemLink = (kind: ProblemKind): Html =>
  html`<a href="/problems/${kind}">${PROBLEM_KINDS[kind].status} ${kind}</a> `;

const parameterList = (parameters: NonNullable<Described['parameters']>): Html => html`<p class="label">Takes</p>
<dl class="answers">${parameters.map(
  ({ name, in: place, description }) =>
    html`<div><dt><code>${name}</code> <span class="kind">${place}</span></dt><dd>${description}</dd></div>`,
)}</dl>`;

function bodyOf(anchor: string, { description, content }: NonNullable<Described['requestBody']>): Html {
  return html`<p class="label">Body</p>${Object.entries(content).map(
    ([type, { schema }]) =>
      html`<p>${description}, as <code>${type}</code>${recordLink(schema)}</p>${detailsOf(`${anchor}.body`, schema, 'Fields of the body')}`,
  )}`;
}

function answerOf(
  anchor: string,
  status: string,
  { description = '', content = {}, headers = {} }: Described['responses'][string],
): Html {
  const names = Object.keys(headers);
  const path = `${anchor}.${status}`;
  return html`<div><dt>${status}</dt><dd>${description}${Object.entries(content).map(
    ([type, { schema }]) => html` <code>${type}</code>${recordLink(schema)}`,
  )}${names.map((name) => html` <span class="kind">with ${name}</span>`)}
${Object.values(content).map(({ schema }) => detailsOf(path, schema, 'Fields of the answer'))}</dd></div>`;
}

/** Returns the link to the page of the record. */
function recordLink({ $ref }: SchemaNode): Html | string {
  return $ref?.endsWith('/VisitRecord') ? html` (<a href="/record">the record</a>)` : '';
}

function detailsOf(path: string, schema: SchemaNode, summary: string): Html | string {
  const items = schema.properties?.items?.items;
  const node = items?.properties ? items : schema;
  if (!node.properties || Object.keys(node.properties).length < 2) return '';
  return html`<details><summary>${items ? `${summary}: list of items` : summary}</summary>${fieldTable(path, flat(node))}</details>`;
}

/** Returns a schema with the nested parts of a response only named; they are described with their own responses. */
function flat(node: SchemaNode): SchemaNode {
  const fields = Object.entries(node.properties ?? {}).map(([name, field]) => [name, withoutParts(field)] as const);
  return { ...node, properties: Object.fromEntries(fields) };
}

function withoutParts({ properties, oneOf: _oneOf, items, ...field }: SchemaNode): SchemaNode {
  if (items) return { ...field, items: withoutParts(items) };
  if (!properties) return field;
  return { ...field, description: field.description ?? `With ${Object.keys(properties).join(', ')}` };
}
