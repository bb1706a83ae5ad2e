import type { Lexicon } from './lexicon.ts';

/** An English text of ours that is said elsewhere, marked so that it is found by whoever translates. */
export function phrase(strings: TemplateStringsArray): string {
  return textOf(strings);
}

/** An English sentence of ours with its values filled in, where no language is known yet; `retold` says it in another. */
export function inEnglish(strings: TemplateStringsArray, ...values: (string | number)[]): string {
  return filled(textOf(strings), values.map(String));
}

/** Says a sentence of ours in the language of a lexicon, as a tagged template; a number in it is a count. */
export type Words = (strings: TemplateStringsArray, ...values: (string | number)[]) => string;

export function wordsOf(lexicon: Lexicon): Words {
  return (strings, ...values) => filled(lexicon.find(textOf(strings)), values.map(String));
}

/** A text with its places filled. */
export function filled(text: string, values: readonly string[]): string {
  return values.length === 0 ? text : text.replace(/\{(\d+)\}/g, (_, place: string) => values[Number(place)] ?? '');
}

/** The English text of a tagged template, which is the key of its translations. */
function textOf(strings: TemplateStringsArray): string {
  return strings.reduce((text, part, index) => `${text}{${index - 1}}${part}`);
}
