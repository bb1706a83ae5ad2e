// Findings are in the language of the record. Text of the record, statements of a regime and titles of documents are
// printed as written: the signed text is that of the rule. Pages of the workshop, the documentation and defects of
// schema and JSON are English.

/** Languages of pages and packs. A language is a folder of `messages/` with every message of English, and a line here. */
export const LANGUAGES = ['en', 'de'] as const;

export type Language = (typeof LANGUAGES)[number];

/** Returns the language of a tag; English if it is missing or not supported. */
export function languageOf(tag: string | undefined): Language {
  return LANGUAGES.find((language) => language === tag) ?? 'en';
}
