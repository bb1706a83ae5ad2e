import browser from './de/browser.json' with { type: 'json' };
import { languageOf } from './language.ts';
import { ENGLISH_LEXICON, type Lexicon, lexiconOf } from './lexicon.ts';

const TEXTS: Readonly<Record<string, string>> = browser;

/** The lexicon for what runs in a reader's browser, by the language of the page: the few texts that are made there, and no others. */
export function browserLexicon(tag: string): Lexicon {
  const language = languageOf(tag);
  return language === 'en' ? ENGLISH_LEXICON : lexiconOf(language, (text) => TEXTS[text]);
}
