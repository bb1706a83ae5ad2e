import type { PluralCategory } from 'make-plural/pluralCategories';
import { FORMATS, PLURALS } from './generated/languages.ts';
import { LANGUAGES, type Language } from './languages.ts';
import type { Form, Said, Value } from './message.ts';
import type { NumberFormat } from './number-format.ts';

/** A language with its formats. */
export interface Locale {
  language: Language;
  format: NumberFormat;
  plural(count: number): PluralCategory;
  /**
   * Returns the text of a message.
   *
   * @param text prints a value of the message
   */
  render(said: Said, text: (value: Value) => string): string;
}

/** Returns the locale of a language. */
export function localeOf(language: Language): Locale {
  const [index, plural] = [LANGUAGES.indexOf(language), PLURALS[language]];
  return {
    language,
    format: FORMATS[language],
    plural,
    render: ({ message, values }, text) => {
      const form: Form<never> | undefined = message[index];
      // A message and its values match by the types of `said`.
      return typeof form === 'function' ? form(values as never, { text, plural }) : (form ?? '');
    },
  };
}

export const ENGLISH: Locale = localeOf('en');
