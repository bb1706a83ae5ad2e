/** The languages that pages and packs are written in; English is the one that the code itself is written in. */
export const LANGUAGES = ['en', 'de'] as const;

export type Language = (typeof LANGUAGES)[number];

/** The language of a record, which may leave it open. */
export function languageOf(named: string | undefined): Language {
  return LANGUAGES.find((language) => language === named) ?? 'en';
}
