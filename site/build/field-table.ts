import { codeIn, type Html, html } from '../../worker/local/markup/html.ts';
import { boundsOf, isPart, kindOf, relationOf, type SchemaNode } from './schema-node.ts';

/** Returns the table of the fields of a part of a schema; each has its own anchor, `path.field`. */
export function fieldTable(path: string, node: SchemaNode): Html {
  const needed = new Set(node.required);
  const rows = Object.entries(node.properties ?? {}).map(([name, field]) =>
    fieldRow(path, name, field, needed.has(name)),
  );
  return html`<table class="fields"><thead><tr><th scope="col">Field</th><th scope="col">Meaning</th></tr></thead>
<tbody>${rows}</tbody></table>`;
}

function fieldRow(path: string, name: string, field: SchemaNode, isNeeded: boolean): Html {
  const anchor = path === '' ? name : `${path}.${name}`;
  const inner = field.items ?? field;
  const label = html`<code>${name}</code>`;
  // A part has its own section with the anchor.
  const key = isPart(inner)
    ? html`<th scope="row"><a href="#${anchor}">${label}</a>`
    : html`<th scope="row" id="${anchor}"><a class="self" href="#${anchor}">${label}</a>`;
  const kind = [kindOf(field), boundsOf(field), relationOf(inner)].filter(Boolean).join(', ');
  return html`<tr>${key}<span class="kind">${kind}${unitOf(inner)}</span>${isNeeded ? html`<span class="needed">required</span>` : ''}</th>
<td>${codeIn(field.description ?? field.title ?? '')}${exampleOf(inner)}</td></tr>
`;
}

function unitOf({ unit }: SchemaNode): Html | string {
  if (unit === undefined || unit === '1') return '';
  const declared = /^units\.(\w+)$/.exec(unit)?.[1];
  if (declared === undefined) return `, in ${unit}`;
  return html`, <a href="/record#units.${DECLARED[declared] ?? declared}">${declared}</a>`;
}

/** Quantity whose declared unit determines the unit of a derived quantity. */
const DECLARED: Readonly<Record<string, string>> = { moment: 'arm', density: 'volume', flow: 'volume' };

function exampleOf({ examples, properties }: SchemaNode): Html | string {
  const [example] = examples ?? [];
  if (example === undefined || properties) return '';
  return html` <span class="example">e.g. <code>${JSON.stringify(example)}</code></span>`;
}
