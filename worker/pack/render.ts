import Handlebars from 'handlebars/runtime.js';
import { partials, templates } from '../../templates/generated/templates.js';

/** What a template may be given: text, lists, and choices already made. Numbers are printed by the view. */
export type View = { readonly [name: string]: ViewValue };
export type ViewValue = string | boolean | readonly ViewValue[] | View;

/** The runtime's own types leave out `create`. */
const engine = (Handlebars as unknown as typeof import('handlebars')).create();
for (const [name, specification] of Object.entries(partials))
  engine.registerPartial(name, engine.template(specification));
const compiled = new Map(
  Object.entries(templates).map(([name, specification]) => [name, engine.template(specification)]),
);

/**
 * Fills a template.
 *
 * @throws Error when there is no such template, or the view lacks a name that it uses: our own fault
 */
export function render(template: string, view: View): string {
  const fill = compiled.get(template);
  if (!fill) throw new Error(`Cannot render: no template is named ${template}`);
  return fill(view);
}
