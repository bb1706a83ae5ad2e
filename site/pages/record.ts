import { visitJsonSchema } from '../../worker/core/record/json-schema.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import { fieldTable } from '../build/field-table.ts';
import type { Page } from '../build/page.ts';
import { partExample } from '../build/part-examples.ts';
import { PART_GUIDES } from '../build/part-guides.ts';
import { prose } from '../build/prose.ts';
import { isPart, type SchemaNode } from '../build/schema-node.ts';

const schema: SchemaNode = visitJsonSchema();

const parts = Object.entries(schema.properties ?? {}).filter(([, field]) => isPart(field.items ?? field));

const contents = html`<nav class="contents" aria-label="Parts of the record"><ul>${parts.map(
  ([name, field]) => html`<li><a href="#${name}">${field.title ?? name}</a></li>`,
)}</ul></nav>`;

/** Returns the section of a part with its fields, then those of its nested parts. */
function partOf(path: string, node: SchemaNode, level: 2 | 3, guide: Html | string = ''): Html {
  const inner = node.items ?? node;
  const heading = html`${inner.title ?? node.title ?? path} <code>${path}${node.items ? '[]' : ''}</code>`;
  const title = level === 2 ? html`<h2 id="${path}">${heading}</h2>` : html`<h3 id="${path}">${heading}</h3>`;
  const nested = Object.entries(inner.properties ?? {}).filter(([, field]) => isPart(field.items ?? field));
  return html`${title}
<p>${inner.description ?? node.description ?? ''}</p>
${guide}
${inner.properties ? fieldTable(path, inner) : ''}
${(inner.oneOf ?? []).map((form) => partOf(`${path}.${nameOf(form)}`, form, 3))}
${nested.map(([name, field]) => partOf(`${path}.${name}`, field, 3))}`;
}

/** Returns a part of an invented record, with long lists cut. */
function exampleOf(name: string): Html | string {
  const example = partExample(name);
  if (example === undefined) return '';
  return html`<details class="example-part"><summary>Example</summary><pre tabindex="0"><code>${JSON.stringify({ [name]: example }, null, 2)}</code></pre></details>`;
}

/** Returns the name of one form of a part, which distinguishes it from the others. */
function nameOf({ properties = {}, title = '' }: SchemaNode): string {
  return String(properties.kind?.enum?.[0] ?? title);
}

/** Page with every part and field of the record, from the schema that the service uses. */
export const record: Page = {
  path: '/record',
  title: 'Record fields',
  description: 'Every part and field of the visit record, with type, unit, meaning and example',
  body: html`${prose('record')}
${contents}
<h2 id="whole">The whole record</h2>
${fieldTable('', schema)}
${parts.map(([name, field]) => partOf(name, field, 2, html`${PART_GUIDES.get(name) ?? ''}${exampleOf(name)}`))}`,
};
