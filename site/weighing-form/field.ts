import { REGIMES } from '../../worker/core/gate/regimes/table.ts';
import { visitJsonSchema } from '../../worker/core/record/json-schema.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { SchemaNode } from '../build/schema-node.ts';

const SCHEMA: SchemaNode = visitJsonSchema();

/** A field of a form, labelled and bounded as the schema has it; its name is its JSON pointer. */
export function formField(pointer: string): Html {
  const node = nodeAt(pointer);
  const id = pointer.slice(1).replaceAll('/', '-');
  const [example] = node.examples ?? [];
  const hint = [node.description, example === undefined || node.enum ? '' : `e.g. ${example}`]
    .filter(Boolean)
    .join('; ');
  return html`<div class="field"><label for="${id}">${titleOf(pointer, node)}${unitOf(node)}</label>
${controlOf(pointer, id, node)}
<small id="${id}-hint">${hint}</small></div>
`;
}

const titleOf = (pointer: string, { title = '' }: SchemaNode): string =>
  pointer.startsWith('/weighing/scales/') ? `Scale, ${title.toLowerCase()}` : run(pointer, title);

/** Readings are told apart by their run. */
function run(pointer: string, title: string): string {
  const index = /\/readings\/(\d)$/.exec(pointer)?.[1];
  return index === undefined ? title : `${title}, run ${Number(index) + 1}`;
}

/** Which unit it is in follows from the choice above, so the page fills it in. */
function unitOf({ unit }: SchemaNode): Html | string {
  if (unit === undefined || unit === '1') return '';
  const quantity = /^units\.(\w+)$/.exec(unit)?.[1];
  return quantity === undefined ? `, ${unit}` : html`, <span data-unit="${quantity}">${quantity}</span>`;
}

function controlOf(pointer: string, id: string, node: SchemaNode): Html {
  if (pointer === '/aircraft/regime')
    return choice(
      pointer,
      id,
      REGIMES.map((regime) => regime.id),
    );
  if (node.enum) return choice(pointer, id, node.enum.map(String));
  if (node.type === 'boolean') return choice(pointer, id, ['true', 'false'], ['yes', 'no'], 'boolean');
  const attributes = html`id="${id}" name="${pointer}" aria-describedby="${id}-hint"`;
  if (node.format === 'date') return html`<input ${attributes} type="date" data-kind="text">`;
  if (node.format === 'date-time') return html`<input ${attributes} type="datetime-local" data-kind="moment">`;
  if (node.type !== 'string')
    return html`<input ${attributes} inputmode="decimal" autocomplete="off" data-kind="number">`;
  return html`<input ${attributes} autocomplete="off" data-kind="text" maxlength="${node.maxLength ?? 200}">`;
}

/** What may be taken for granted. Everything else is chosen: a form that says of itself how it was weighed says nothing. */
const GRANTED = /^\/(?:units|workshop)\//;

function choice(pointer: string, id: string, values: readonly string[], words = values, kind = 'text'): Html {
  const options = values.map((value, index) => html`<option value="${value}">${words[index] ?? value}</option>`);
  const open = GRANTED.test(pointer) ? '' : html`<option value="">to be chosen</option>`;
  return html`<select id="${id}" name="${pointer}" aria-describedby="${id}-hint" data-kind="${kind}">${open}${options}</select>`;
}

/** @throws Error where the record has no such field */
function nodeAt(pointer: string): SchemaNode {
  const steps = pointer.split('/').slice(1);
  const found = steps.reduce<SchemaNode | undefined>((node, step) => (node ? childOf(node, step) : undefined), SCHEMA);
  if (!found) throw new Error(`The record has no field ${pointer}`);
  return found;
}

/** In a list of several forms, the first form that has the field: a tank is the only one that has a capacity. */
function childOf({ properties, items, oneOf, anyOf }: SchemaNode, step: string): SchemaNode | undefined {
  if (items && /^\d+$/.test(step)) return items;
  if (properties?.[step]) return properties[step];
  return (oneOf ?? anyOf ?? []).map((form) => childOf(form, step)).find((found) => found !== undefined);
}
