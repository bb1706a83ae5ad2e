// Findings are in the language of the record. Text of the record, sources and the words of a rule are printed as
// written; the statement above a signature is in the language of the record, and the words of its rule follow it. Pages
// of the workshop, the documentation and defects of schema and JSON are English.

/** Languages of pages and packs. A language is a folder of `messages/` with every message of English, and a line here. */
export const LANGUAGES = ['en', 'de'] as const;

export type Language = (typeof LANGUAGES)[number];

/** Returns the language of a tag; English if it is missing or not supported. */
export function languageOf(tag: string | undefined): Language {
  return LANGUAGES.find((language) => language === tag) ?? 'en';
}
