import Handlebars from 'handlebars/runtime.js';
import { partials, templates } from '../../templates/generated/templates.js';
import { ENGLISH_LEXICON, type Lexicon } from '../words/lexicon.ts';
import { filled } from '../words/words.ts';

/** What a template may be given: text, lists, and choices already made. Numbers are printed by the view. */
export type View = { readonly [name: string]: ViewValue };
export type ViewValue = string | boolean | readonly ViewValue[] | View;

/** The runtime's own types leave out `create`. */
const engine = (Handlebars as unknown as typeof import('handlebars')).create();
engine.registerHelper('words', words);
for (const [name, specification] of Object.entries(partials))
  engine.registerPartial(name, engine.template(specification));
const compiled = new Map(
  Object.entries(templates).map(([name, specification]) => [name, engine.template(specification)]),
);

/** What a template is filled with beside its view: who says it, and where. */
interface Told {
  lexicon: Lexicon;
  language: string;
  template: string;
}

/** A text of a template with what is filled into it, in the language of the reader. The text is HTML, the values are not. */
function words(text: string, ...given: unknown[]): string {
  const { data } = given.pop() as { data: Told };
  const values = given.map((value) => {
    if (typeof value !== 'string') throw new Error(`a name in "${text}" is missing`);
    return engine.escapeExpression(value);
  });
  return filled(data.lexicon.find(text, data.template), values);
}

/**
 * Fills a template.
 *
 * @throws Error when there is no such template, or the view lacks a name that it uses: our own fault
 */
export function render(template: string, view: View, lexicon: Lexicon = ENGLISH_LEXICON): string {
  const fill = compiled.get(template);
  if (!fill) throw new Error(`Cannot render: no template is named ${template}`);
  const data: Told = { lexicon, language: lexicon.language, template };
  try {
    return fill(view, { data });
  } catch (cause) {
    throw new Error(`Cannot render ${template}: ${cause instanceof Error ? cause.message : cause}`, { cause });
  }
}
