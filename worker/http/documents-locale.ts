import type { PackDocument } from '../pipeline.ts';
import { languageOf } from '../text/languages.ts';
import { type Locale, localeOf } from '../text/locale.ts';

/** A page speaks the language of the documents that it shows. */
export function localeOfDocuments([first]: readonly PackDocument[]): Locale {
  return localeOf(languageOf(/ lang="(\w+)"/.exec(first?.html ?? '')?.[1]));
}
