/**
 * The languages that pages and packs are written in. A language is a folder of `messages/` with every message of English, and a line
 * here.
 */
export const LANGUAGES = ['en', 'de'] as const;

export type Language = (typeof LANGUAGES)[number];

/** The language of this tag; English when it is missing or not one of ours. */
export function languageOf(tag: string | undefined): Language {
  return LANGUAGES.find((language) => language === tag) ?? 'en';
}
