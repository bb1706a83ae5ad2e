import type { Lexicon } from './lexicon.ts';

/** A sentence that no language has been chosen for yet: an English text with `{0}` and so on, and what is filled in. */
export interface Message {
  text: string;
  values: readonly Said[];
}

/** What is said as it stands, such as a name from the record, or a sentence of ours. */
export type Said = string | Message;

/**
 * A sentence of ours, for stages that know of no language.
 *
 * @example message`Scale ${id}, error limit`  // { text: 'Scale {0}, error limit', values: [id] }
 */
export function message(strings: TemplateStringsArray, ...values: Said[]): Message {
  return { text: textOf(strings), values };
}

/** An English text of ours that is said elsewhere, marked so that it is found by whoever translates. */
export function phrase(strings: TemplateStringsArray): string {
  return textOf(strings);
}

/** Says a sentence of ours in the language of a lexicon, as a tagged template; a number in it is a count. */
export type Words = (strings: TemplateStringsArray, ...values: (string | number)[]) => string;

export function wordsOf(lexicon: Lexicon): Words {
  return (strings, ...values) => filled(lexicon.find(textOf(strings)), values.map(String));
}

/** A sentence in the language of a lexicon. */
export function said(lexicon: Lexicon, what: Said): string {
  if (typeof what === 'string') return what;
  const values = what.values.map((value) => said(lexicon, value));
  return filled(lexicon.find(what.text), values);
}

/** A text with its places filled. */
export function filled(text: string, values: readonly string[]): string {
  return values.length === 0 ? text : text.replace(/\{(\d+)\}/g, (_, place: string) => values[Number(place)] ?? '');
}

/** The English text of a tagged template, which is the key of its translations. */
function textOf(strings: TemplateStringsArray): string {
  return strings.reduce((text, part, index) => `${text}{${index - 1}}${part}`);
}
