import { GERMAN } from './generated/german.ts';
import { keyOf } from './key-of.ts';
import type { Language } from './language.ts';
import { ENGLISH_LEXICON, type Lexicon, lexiconOf } from './lexicon.ts';

const LEXICONS: Readonly<Record<Language, Lexicon>> = {
  en: ENGLISH_LEXICON,
  de: lexiconOf('de', (text) => GERMAN[keyOf(text)]),
};

export function lexiconFor(language: Language): Lexicon {
  return LEXICONS[language];
}
