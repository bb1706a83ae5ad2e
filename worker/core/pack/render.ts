import Handlebars from 'handlebars/runtime.js';
import { partials, templates } from '../../../templates/generated/templates.js';
import { type Say, sayIn } from '../text/formatter.ts';
import { ENGLISH, type Locale } from '../text/locale.ts';
import type { Message } from '../text/message.ts';

/** Data of a template: text, lists, and decided choices. The view formats numbers. */
export type View = { readonly [name: string]: ViewValue };
export type ViewValue = string | boolean | readonly ViewValue[] | View;

/** The runtime's own types leave out `create`. */
const engine = (Handlebars as unknown as typeof import('handlebars')).create();
engine.registerHelper('t', t);
for (const [name, specification] of Object.entries(partials))
  engine.registerPartial(name, engine.template(specification));
const compiled = new Map(
  Object.entries(templates).map(([name, specification]) => [name, engine.template(specification)]),
);

/** Data of a template in addition to its view. */
interface RenderData {
  say: Say;
  language: string;
}

/** Returns a message of a template with its values, in the language of the reader. The message is HTML, the values are not. */
function t(
  message: Message<Record<string, string>>,
  { hash, data }: { hash: Record<string, unknown>; data: RenderData },
): string {
  const values = Object.entries(hash).map(([name, value]) => {
    if (typeof value !== 'string') throw new Error(`"${name}" not defined`);
    return [name, engine.escapeExpression(value)] as const;
  });
  return data.say(message, Object.fromEntries(values));
}

/**
 * Fills a template.
 *
 * @throws Error for an unknown template, or if the view lacks a name that it uses: an error of ours
 */
export function render(template: string, view: View, locale: Locale = ENGLISH): string {
  const fill = compiled.get(template);
  if (!fill) throw new Error(`Cannot render: no template is named ${template}`);
  const data: RenderData = { say: sayIn(locale), language: locale.language };
  try {
    return fill(view, { data });
  } catch (error) {
    // The compiled templates do not state their name.
    const reason = error instanceof Error ? error.message : String(error);
    throw new Error(`Cannot render ${template}: ${reason}`, { cause: error });
  }
}
