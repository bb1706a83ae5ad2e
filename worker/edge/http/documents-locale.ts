import type { PackDocument } from '../../core/core.ts';
import { languageOf } from '../../core/text/languages.ts';
import { type Locale, localeOf } from '../../core/text/locale.ts';

/** A page speaks the language of the documents that it shows. */
export function localeOfDocuments([first]: readonly PackDocument[]): Locale {
  return localeOf(languageOf(/ lang="(\w+)"/.exec(first?.html ?? '')?.[1]));
}
