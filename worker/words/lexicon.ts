import { FIGURES, type Figures } from './figures.ts';
import type { Language } from './language.ts';

/** A language as it is written: its words for the English ones, and its figures. */
export interface Lexicon {
  language: Language;
  figures: Figures;
  /**
   * What stands for an English text; the text itself where there is nothing.
   *
   * @param place document in which it stands, for words that mean something else there
   */
  find(text: string, place?: string): string;
}

export const ENGLISH_LEXICON: Lexicon = { language: 'en', figures: FIGURES.en, find: (text) => text };

/**
 * A lexicon over a catalogue.
 *
 * @param look gives what stands for an English text, or for one in a document alone, `name | text`
 */
export function lexiconOf(language: Language, look: (key: string) => string | undefined): Lexicon {
  return {
    language,
    figures: FIGURES[language],
    find: (text, place) => (place === undefined ? undefined : look(`${place} | ${text}`)) ?? look(text) ?? text,
  };
}
