import type { PackDocument } from '../../core/core.ts';
import { languageOf } from '../../core/text/languages.ts';
import { type Locale, localeOf } from '../../core/text/locale.ts';

/** Returns the locale of a page: that of the documents on it. */
export function localeOfDocuments([first]: readonly PackDocument[]): Locale {
  return localeOf(languageOf(/ lang="(\w+)"/.exec(first?.html ?? '')?.[1]));
}
