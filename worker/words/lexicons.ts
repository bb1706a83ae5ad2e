import browser from './de/browser.json' with { type: 'json' };
import documents from './de/documents.json' with { type: 'json' };
import files from './de/files.json' with { type: 'json' };
import pages from './de/pages.json' with { type: 'json' };
import rules from './de/rules.json' with { type: 'json' };
import terms from './de/terms.json' with { type: 'json' };
import views from './de/views.json' with { type: 'json' };
import type { Language } from './language.ts';
import { ENGLISH_LEXICON, type Lexicon, lexiconOf } from './lexicon.ts';

/**
 * German texts by the English ones, which are their keys, as they stand in templates and code. `{0}` and so on are what is filled
 * in, in any order. A key that begins with the name of a document and a stroke holds in that document alone.
 *
 * Not here, because they are printed as they were written: what a record says, the statements and sources of a regime (what is
 * signed is the text of the rule, not somebody's rendering of it), and names of papers.
 */
export const GERMAN: Readonly<Record<string, string>> = {
  ...documents,
  ...views,
  ...terms,
  ...rules,
  ...files,
  ...pages,
  ...browser,
};

const LEXICONS: Readonly<Record<Language, Lexicon>> = {
  en: ENGLISH_LEXICON,
  de: lexiconOf('de', GERMAN),
};

export function lexiconFor(language: Language): Lexicon {
  return LEXICONS[language];
}
